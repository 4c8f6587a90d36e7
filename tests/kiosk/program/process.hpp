#pragma once
// Programs started for a test, and ended with it.

#include <sys/types.h>

#include <string>
#include <utility>
#include <vector>

namespace rackside::tests {

class Process {
 public:
  Process() = default;
  /// `words[0]` is looked for in the path. `settings` are added to the environment ("DISPLAY=:5").
  /// What it prints goes to `output`, or nowhere when that is empty.
  Process(std::vector<std::string> words, std::vector<std::string> settings = {},
          const std::string& output = {}, int kept_open = -1);
  ~Process() { end(); }
  Process(Process&& other) noexcept : id_(std::exchange(other.id_, 0)) {}
  Process& operator=(Process&& other) noexcept;

  [[nodiscard]] bool started() const { return id_ > 0; }
  /// Ends it at once, as a power cut would.
  void kill();
  /// Asks it to end, waits and gives its exit code; -1 when a signal ended it.
  int end();
  /// Waits for its end and gives its exit code.
  int wait();

 private:
  pid_t id_ = 0;
};

/// Runs a program to its end. Gives its exit code; `said` gets what it printed to both streams.
int run(std::vector<std::string> words, std::string& said, std::vector<std::string> settings = {});

}  // namespace rackside::tests

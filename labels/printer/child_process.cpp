#include "labels/printer/child_process.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <poll.h>
#include <spawn.h>
#include <sys/mman.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <cstring>
#include <optional>

extern char** environ;

namespace rackside {
namespace {

using Clock = std::chrono::steady_clock;

constexpr std::size_t most_output = 1 << 20;

class File {
 public:
  explicit File(int number) : number_(number) {}
  ~File() { close(); }
  File(const File&) = delete;
  File& operator=(const File&) = delete;
  [[nodiscard]] int number() const { return number_; }
  void close() {
    if (number_ >= 0) ::close(number_);
    number_ = -1;
  }

 private:
  int number_;
};

class FileActions {
 public:
  FileActions() { posix_spawn_file_actions_init(&actions_); }
  ~FileActions() { posix_spawn_file_actions_destroy(&actions_); }
  FileActions(const FileActions&) = delete;
  FileActions& operator=(const FileActions&) = delete;
  void put(int file, int as) { posix_spawn_file_actions_adddup2(&actions_, file, as); }
  [[nodiscard]] const posix_spawn_file_actions_t* get() const { return &actions_; }

 private:
  posix_spawn_file_actions_t actions_{};
};

tl::unexpected<Error> broken(const std::string& program, std::string_view why) {
  return failure(ErrorKind::Broken, fmt::format("The program {} {}.", program, why), program);
}

// A file in memory, read from its start: no name on any disk, and no pipe that could fill up.
int input_file(std::string_view input) {
  const int file = ::memfd_create("input", MFD_CLOEXEC);
  while (file >= 0 && !input.empty()) {
    const ssize_t written = ::write(file, input.data(), input.size());
    if (written <= 0) break;
    input.remove_prefix(static_cast<std::size_t>(written));
  }
  if (file >= 0) ::lseek(file, 0, SEEK_SET);
  return file;
}

std::vector<char*> pointers_to(const std::vector<std::string>& texts) {
  std::vector<char*> pointers;
  for (const std::string& text : texts) pointers.push_back(const_cast<char*>(text.c_str()));
  pointers.push_back(nullptr);
  return pointers;
}

std::vector<std::string> english_environment() {
  std::vector<std::string> list;
  for (char** entry = environ; *entry != nullptr; ++entry)
    if (std::strncmp(*entry, "LC_ALL=", 7) != 0 && std::strncmp(*entry, "LANGUAGE=", 9) != 0)
      list.emplace_back(*entry);
  list.emplace_back("LC_ALL=C");
  return list;
}

// Until the child closes its end, or time is up.
bool read_until_closed(int file, Clock::time_point end, std::string& output) {
  for (;;) {
    const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(end - Clock::now());
    if (left.count() <= 0) return false;
    pollfd waiting{file, POLLIN, 0};
    const int ready = ::poll(&waiting, 1, static_cast<int>(left.count()));
    if (ready < 0 && errno != EINTR) return false;
    if (ready <= 0) continue;
    char buffer[4096];
    const ssize_t got = ::read(file, buffer, sizeof buffer);
    if (got == 0) return true;
    if (got > 0 && output.size() < most_output)
      output.append(buffer, static_cast<std::size_t>(got));
  }
}

// The exit status, or none when the child is still running at `end`.
std::optional<int> wait_for(pid_t child, Clock::time_point end) {
  for (;;) {
    int status = 0;
    if (::waitpid(child, &status, WNOHANG) == child) return status;
    if (Clock::now() >= end) return std::nullopt;
    ::poll(nullptr, 0, 5);
  }
}

void end_child(pid_t child) {
  ::kill(child, SIGKILL);
  ::waitpid(child, nullptr, 0);
}

}  // namespace

Result<ProcessOutcome> run_program(const std::vector<std::string>& arguments,
                                   std::string_view input, std::chrono::milliseconds patience) {
  const std::string& program = arguments.at(0);
  const File in(input_file(input));
  int ends[2];
  if (in.number() < 0 || ::pipe2(ends, O_CLOEXEC) != 0) return broken(program, "could not start");
  const File reading(ends[0]);
  File writing(ends[1]);
  FileActions actions;
  actions.put(in.number(), STDIN_FILENO);
  actions.put(writing.number(), STDOUT_FILENO);
  actions.put(writing.number(), STDERR_FILENO);

  const auto environment = english_environment();
  pid_t child = 0;
  const int problem =
      ::posix_spawnp(&child, program.c_str(), actions.get(), nullptr, pointers_to(arguments).data(),
                     pointers_to(environment).data());
  if (problem == ENOENT)
    return failure(ErrorKind::NotFound, fmt::format("There is no program {} here.", program),
                   program);
  if (problem != 0) return broken(program, "could not start");
  writing.close();

  const auto end = Clock::now() + patience;
  ProcessOutcome outcome;
  const bool closed = read_until_closed(reading.number(), end, outcome.output);
  const auto status = closed ? wait_for(child, end) : std::nullopt;
  if (!status) {
    end_child(child);
    return broken(program, "did not answer");
  }
  if (!WIFEXITED(*status)) return broken(program, "stopped in the middle");
  outcome.exit_code = WEXITSTATUS(*status);
  return outcome;
}

}  // namespace rackside

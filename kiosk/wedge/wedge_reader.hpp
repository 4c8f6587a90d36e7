#pragma once
// A keyboard-wedge scanner types what it reads, like a very fast person. This tells the two apart
// by pace alone, so that it works with any scanner and any keyboard layout that has our alphabet.
// Pure: the time of each key is handed in.

#include <chrono>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace rackside {

/// Since any fixed moment; only differences count.
using KeyTime = std::chrono::milliseconds;

/// What separates a scanner from a person. A scanner has a code whole within 50 to 100 ms, about
/// 12 ms a key; a very fast typist strikes 15 keys a second, 66 ms a key (common practice, no
/// source). Two keys of a person can roll over each other within 20 ms, four in a row cannot.
struct WedgeLimits {
  std::size_t least_keys = 4;        // fewer are never a burst
  KeyTime pace{25};                  // mean gap of a burst, at most
  KeyTime gap{60};                   // longest gap inside a run; a longer silence ends it
  KeyTime echo{200};                 // an ending key this soon after a burst belongs to it
  std::size_t whole_keys = 8;        // a burst of this length is whole without an ending key
  std::size_t most_characters = 64;  // what is kept of a burst; the rest is swallowed
};

enum class EndKey { Enter, Tab };

/// A whole burst. Letters are upper case, as caps lock turns a scanner's letters around; of a long
/// one only the beginning is kept, which is enough to see that it is not ours.
struct Scanned {
  std::string text;
  bool operator==(const Scanned&) const = default;
};
/// Keys of a person, in order, exactly as they came in.
struct Typed {
  std::string text;
  bool operator==(const Typed&) const = default;
};
struct TypedEnd {
  EndKey key;
  bool operator==(const TypedEnd&) const = default;
};
using WedgeOutput = std::variant<Scanned, Typed, TypedEnd>;

/// Feed it keys in order of time and pass on what comes back, in order. A burst that breaks off
/// before its ending key and is not `whole_keys` long is dropped without a trace.
class WedgeReader {
 public:
  explicit WedgeReader(WedgeLimits limits = {}) : limits_(limits) {}

  /// One key's text as the keyboard layout gave it (UTF-8, usually one character).
  [[nodiscard]] std::vector<WedgeOutput> key(std::string_view text, KeyTime at);
  [[nodiscard]] std::vector<WedgeOutput> end_key(EndKey key, KeyTime at);
  /// Call when `next_deadline` has come without a key.
  [[nodiscard]] std::vector<WedgeOutput> tick(KeyTime now);
  /// When `tick` should be called; none while nothing is pending.
  [[nodiscard]] std::optional<KeyTime> next_deadline() const;

 private:
  using Outputs = std::vector<WedgeOutput>;

  [[nodiscard]] bool is_burst() const;
  [[nodiscard]] bool is_person() const;
  void append(std::string_view text, KeyTime at);
  void close_run(Outputs& outputs);
  void hand_back(Outputs& outputs);
  void scanned(Outputs& outputs);
  void split_off_head(Outputs& outputs);
  void clear();

  WedgeLimits limits_;
  std::string text_;  // of the run, at most most_characters
  std::size_t keys_ = 0;
  std::size_t head_bytes_ = 0;  // of the run's first key
  KeyTime first_{0}, second_{0}, last_{0};
  std::optional<KeyTime> burst_end_;  // when the last burst ended, whole or dropped
};

}  // namespace rackside

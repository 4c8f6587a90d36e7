#pragma once
// The keeper's PIN: what one may be, how wrong tries are slowed down, and the port to where it is
// kept. There is one PIN for the keepers of a log, and none before somebody has set it.
//
// What it guards is a kiosk that hangs on a wall: a visitor or an assistant cannot change what the
// keeper has set, and leaves the program to nobody. It does not guard against somebody who can use
// the machine's account: they can delete the file the PIN is in, or read its hash and try all the
// ten thousand PINs of four digits within the hour. The log itself is not encrypted.

#include <chrono>
#include <string>
#include <string_view>

#include "core/values/result.hpp"

namespace rackside {

inline constexpr std::size_t shortest_pin = 4;
inline constexpr std::size_t longest_pin = 8;

/// Whether these digits may become a PIN. Errors: BadInput for another length, anything but
/// digits, and what is tried first: one digit again and again, digits in a row up or down, a piece
/// said twice ("1212"), the middle column of the pad, a year.
[[nodiscard]] Result<void> judge_new_pin(std::string_view digits);

/// Since the program started. Wrong tries wait by it and by no clock that can be set.
using Uptime = std::chrono::milliseconds;

/// How long nobody may try after so many wrong tries in a row: nothing after three, then half a
/// minute, twice as long each time, an hour at most.
[[nodiscard]] std::chrono::seconds wait_after(int wrong_tries);

/// Counts wrong tries. A restart neither forgets them nor shortens the wait, which then begins
/// anew: how long the program was off is known only from a clock that can be set.
class PinTries {
 public:
  explicit PinTries(int wrong, Uptime now = {}) : wrong_(wrong), since_(now) {}

  [[nodiscard]] int wrong() const { return wrong_; }
  /// How long to wait before the next try.
  [[nodiscard]] std::chrono::seconds left(Uptime now) const;
  /// A try counts as wrong until it has turned out to be right, so that pulling the plug in
  /// between saves nobody a wait.
  void begin(Uptime now) {
    ++wrong_;
    since_ = now;
  }
  void right() { wrong_ = 0; }

 private:
  int wrong_;
  Uptime since_;
};

enum class PinVerdict { Right, Wrong, Wait };

struct PinAnswer {
  PinVerdict verdict = PinVerdict::Wrong;
  std::chrono::seconds wait{0};  // before the next try

  bool operator==(const PinAnswer&) const = default;
};

/// Where the PIN is kept, as a hash.
class PinKeeper {
 public:
  virtual ~PinKeeper() = default;

  /// Errors: Broken when it cannot be told; nobody is let in then.
  [[nodiscard]] virtual Result<bool> is_set() = 0;
  /// Takes the place of the PIN there was. Errors: as judge_new_pin; Full, ReadOnly, Broken, and
  /// what there was holds on.
  [[nodiscard]] virtual Result<void> set(std::string_view pin) = 0;
  /// Takes about half a second when it is not waiting. Errors: NotFound when no PIN is set; Full,
  /// ReadOnly, Broken when the try could not be counted, and was therefore not made.
  [[nodiscard]] virtual Result<PinAnswer> check(std::string_view pin) = 0;
};

}  // namespace rackside

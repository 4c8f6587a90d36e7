#pragma once
// When the screen goes dark, and what the touch that wakes it may do: nothing else. A label that is
// scanned in the dark counts; whoever scans means that tub. Pure: the time is handed in.

#include <chrono>
#include <optional>

namespace rackside::kiosk {

class Blanking {
 public:
  /// Since any fixed moment, by a clock that nobody sets.
  using Time = std::chrono::milliseconds;

  /// Dark after this long without a hand; zero: never.
  void set_after(Time after);
  /// Somebody is there. Whether this touch or key only wakes the screen, which goes for all that
  /// come with it: a second tap of a person who knocked twice, the rest of a key's events.
  bool touched(Time now);
  /// Call when `next_deadline` has come.
  void tick(Time now);

  [[nodiscard]] bool dark() const { return dark_; }
  /// None while it is dark, or when it never gets dark.
  [[nodiscard]] std::optional<Time> next_deadline() const;

 private:
  Time after_{0};
  Time last_{0};
  std::optional<Time> woken_;
  bool dark_ = false;
};

}  // namespace rackside::kiosk

#pragma once
// The one motion there is: a record that was made just now comes down onto its place in the strip,
// so that the eye sees where it went.

#include <chrono>
#include <optional>

#include "kiosk/scene/scene.hpp"

namespace rackside::kiosk {

class Landing {
 public:
  /// Since any fixed moment, by a clock that nobody sets.
  using Time = std::chrono::milliseconds;
  static constexpr Time takes{120};

  /// The scene that is shown from `now` on. A record that lands in it begins to, once.
  void follow(const Scene& scene, Time now);
  /// The record as it is at `now`, larger than it will be; none when nothing lands.
  [[nodiscard]] std::optional<MarkAt> at(Time now) const;
  /// When the next picture of it is due; none when nothing lands.
  [[nodiscard]] std::optional<Time> next_deadline(Time now) const;

 private:
  std::optional<LandingMark> mark_;
  Time began_{0};
};

}  // namespace rackside::kiosk

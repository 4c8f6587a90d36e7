#pragma once
// The port to the clock on the wall. Programs ask it; the pure rooms are told what it said.

#include "core/values/time.hpp"

namespace rackside {

class Clock {
 public:
  virtual ~Clock() = default;

  /// Now, with what the wall clock here and now differs from UTC by.
  [[nodiscard]] virtual Moment now() = 0;
  /// The offset the wall clock here had, or will have, at `instant`: summer and winter differ.
  [[nodiscard]] virtual std::chrono::minutes offset_at(Instant instant) = 0;
};

}  // namespace rackside

#pragma once
// The machine's own clock and time zone.

#include "core/clock/clock.hpp"

namespace rackside {

/// May be asked from any thread. Follows a change of the machine's time zone while the program
/// runs. An offset that is no whole number of minutes (some zones before the 1970s) is cut to one.
class SystemClock : public Clock {
 public:
  Moment now() override;
  std::chrono::minutes offset_at(Instant instant) override;
};

}  // namespace rackside

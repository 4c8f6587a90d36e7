#include "core/clock/system_clock.hpp"

#include <ctime>
#include <mutex>

namespace rackside {

using namespace std::chrono;

Moment SystemClock::now() {
  const auto utc = floor<milliseconds>(system_clock::now());
  return {utc, offset_at(utc)};
}

minutes SystemClock::offset_at(Instant instant) {
  // The zone belongs to the whole program; the kiosk asks from several threads.
  static std::mutex one_at_a_time;
  const std::lock_guard lock(one_at_a_time);
  // localtime_r alone may go on with the zone it read first; tzset looks again, and reads the
  // zone's file only when it changed.
  tzset();
  const std::time_t time = system_clock::to_time_t(floor<seconds>(instant));
  std::tm local{};
  if (localtime_r(&time, &local) == nullptr) return minutes{0};
  return duration_cast<minutes>(seconds{local.tm_gmtoff});
}

}  // namespace rackside

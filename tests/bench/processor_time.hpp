#pragma once
// Processor time of this thread alone, so that what else the machine does neither helps nor hurts.

#include <ctime>

namespace rackside::bench {

inline double milliseconds_spent() {
  timespec time{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
  return 1e3 * static_cast<double>(time.tv_sec) + 1e-6 * static_cast<double>(time.tv_nsec);
}

}  // namespace rackside::bench

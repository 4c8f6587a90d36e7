#include "core/cover/days.hpp"

namespace rackside {

std::vector<Moment> days_until(const Moment& now, Day last) {
  std::vector<Moment> moments{now};
  for (Moment next = now; next.day() < last;) {
    next.utc += std::chrono::days{1};
    moments.push_back(next);
  }
  return moments;
}

}  // namespace rackside

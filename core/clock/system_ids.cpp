#include "core/clock/system_ids.hpp"

#include <random>

namespace rackside {

std::uint64_t random_bits() {
  thread_local std::random_device device;
  static_assert(std::random_device::max() == 0xFFFFFFFFu);
  return std::uint64_t{device()} << 32 | device();
}

}  // namespace rackside

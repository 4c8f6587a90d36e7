#pragma once
// Ids from the machine's clock and its source of random bits.

#include "core/clock/clock.hpp"
#include "core/clock/id_source.hpp"

namespace rackside {

/// 64 bits from the operating system's random device.
[[nodiscard]] std::uint64_t random_bits();

class SystemIds : public IdSource {
 public:
  /// `clock` outlives the ids' source.
  explicit SystemIds(Clock& clock) : clock_(clock) {}
  Uuid next() override { return mint_.next(clock_.now().utc, random_bits()); }

 private:
  Clock& clock_;
  UuidMint mint_;
};

}  // namespace rackside

#pragma once
// Universally unique, time-ordered ids (UUID version 7, RFC 9562 section 5.7).

#include <array>
#include <compare>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>

#include "core/values/result.hpp"
#include "core/values/time.hpp"

namespace rackside {

struct Uuid {
  std::array<std::uint8_t, 16> bytes{};

  auto operator<=>(const Uuid&) const = default;
};

/// "0190163d-8694-739b-aea5-966c26f8ad91", lower case.
[[nodiscard]] std::string format_uuid(const Uuid& id);
/// Errors: BadInput.
[[nodiscard]] Result<Uuid> parse_uuid(std::string_view text);
/// The UTC millisecond a version 7 id carries in its first 48 bits.
[[nodiscard]] Instant instant_of(const Uuid& id);

/// Makes ids that sort in the order in which they were made, also within one millisecond and when
/// the clock is set back. Clock and random numbers are handed in, so that a test can repeat a run.
class UuidMint {
 public:
  /// `random` is 64 fresh random bits.
  [[nodiscard]] Uuid next(Instant now, std::uint64_t random);

 private:
  std::int64_t last_ms_ = -1;
  std::uint16_t counter_ =
      0;  // rand_a of the RFC, used as the counter of its section 6.2, method 1
};

/// An id that cannot be mistaken for the id of something else.
template <class Tag>
struct Id {
  Uuid value;

  auto operator<=>(const Id&) const = default;
};

using EventId = Id<struct EventTag>;
using AnimalId = Id<struct AnimalTag>;
using KioskId = Id<struct KioskTag>;

}  // namespace rackside

template <>
struct std::hash<rackside::Uuid> {
  std::size_t operator()(const rackside::Uuid& id) const noexcept {
    // The last eight bytes are random; they are hash enough.
    std::uint64_t value = 0;
    for (std::size_t i = 8; i < 16; ++i) value = value << 8 | id.bytes[i];
    return static_cast<std::size_t>(value);
  }
};

template <class Tag>
struct std::hash<rackside::Id<Tag>> {
  std::size_t operator()(const rackside::Id<Tag>& id) const noexcept {
    return std::hash<rackside::Uuid>{}(id.value);
  }
};

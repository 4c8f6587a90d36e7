#include "kiosk/model/intent.hpp"

namespace rackside::kiosk {

Intent::Intent(const Intent& other) = default;
Intent::Intent(Intent&& other) noexcept = default;
Intent& Intent::operator=(const Intent& other) = default;
Intent& Intent::operator=(Intent&& other) noexcept = default;
Intent::~Intent() = default;
bool Intent::operator==(const Intent& other) const = default;

}  // namespace rackside::kiosk

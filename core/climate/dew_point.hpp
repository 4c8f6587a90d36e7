#pragma once
// Dew point, by the Magnus form with the constants of Alduchov & Eskridge 1996, J. Appl. Meteor.
// 35:601-609 (17.625 and 243.04 C), over water, good to 0.4 C between -40 and 50 C.

#include <optional>

#include "core/values/units.hpp"

namespace rackside {

/// The temperature at which this air begins to wet what it touches. None outside -40 to 60 C and
/// for humidity that is not above 0 and at most 100 %.
[[nodiscard]] std::optional<Celsius> dew_point(Celsius temperature, Percent humidity);

}  // namespace rackside

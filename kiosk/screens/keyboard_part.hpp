#pragma once
// The on-screen keyboard, the same wherever words are entered.

#include "kiosk/scene/composer.hpp"

namespace rackside::kiosk {

enum class Letters { Small, Capital };
/// The row with the key for capitals and the signs that sentences need.
enum class Row { LeftOut, Shown };

/// Along the bottom of `box`; takes what it uses off it.
void keyboard(Composer& composer, Box& box, Letters letters, Row writing);

}  // namespace rackside::kiosk

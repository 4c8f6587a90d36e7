#pragma once
// The small marks that stand for records: one stroke weight, drawn by us, the same in the strip,
// in the records and on the tiles, and never without their word near by.

#include <vector>

#include "core/action/action.hpp"
#include "core/event/details.hpp"
#include "kiosk/scene/geometry.hpp"

namespace rackside::kiosk {

enum class Mark {
  None,
  Taken,      // a cup with the prey in it
  Refused,    // a closed cup with the prey outside above
  Left,       // the prey beside the cup
  PreyOut,    // the prey leaving
  Shed,       // an empty skin, open along the back
  Moult,      // a skin and the animal coming out of it
  OnItsBack,  // legs up
  Looked,     // an eye
  Sign,       // a pennant: look here first
  Dark,       // an abdomen with a filled patch
  Plump,      // an abdomen wider than long
  Slow,       // a body low between bent legs
  Sealed,     // the mouth of a retreat, webbed over
  Long,       // legs laid out straight, front and back
  Bright,     // an abdomen with rays
  Active,     // tracks out of the retreat
  Thin,       // an abdomen fallen in at the sides
  Misted,     // drops falling
  Water,      // a dish with water
  Measured,   // a ruled length
  Sexed,      // two receptacles
  Housed,     // a tub
  Arrived,    // an arrow into a tub
  Gone,       // an arrow out of a tub
  Died,       // the dagger of the naturalists
  Paired,     // two linked rings
  Sac,        // a round sac with its weave
  Written,    // lines of a note
  Climate,    // a thermometer's stem
  Person,     // somebody, from the front
  Badge,      // a card on its clip
  Away,       // a suitcase
  TakenBack,  // a bent arrow
};

/// One stroke of a mark: points of a line in a unit square, closed or open, filled or not.
struct Stroke {
  std::vector<Spot> points;
  bool closed = false;
  bool filled = false;
  bool operator==(const Stroke&) const = default;
};

[[nodiscard]] const std::vector<Stroke>& strokes(Mark mark);

[[nodiscard]] Mark mark_of(const Details& details);
/// The one of several that weighs most.
[[nodiscard]] Mark mark_of(SignSet signs);
[[nodiscard]] Mark mark_of(Action action);

}  // namespace rackside::kiosk

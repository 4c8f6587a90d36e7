#pragma once
// Things to be told, one below the other, over as many pages as they need.

#include "kiosk/screens/parts.hpp"
#include "kiosk/view/cover_view.hpp"

namespace rackside::kiosk {

/// Into the whole of `box`, the page that is wanted, with keys to turn pages where there are
/// several. A part that needs more than a page goes on on the next one.
void told_parts(Composer& composer, Box box, const std::vector<ToldPart>& parts, int wanted);

}  // namespace rackside::kiosk

#pragma once
// What the tub screen of a keeper and that of somebody who stands in have in common.

#include "kiosk/model/model.hpp"
#include "kiosk/scene/composer.hpp"
#include "kiosk/view/tub_view.hpp"

namespace rackside::kiosk {

/// Who and where, along the top of `box`; touching it leads back to the round.
void who_block(Composer& composer, Box& box, const TubView& view);

/// What was just saved, with its undo.
void saved_line(Composer& composer, Box box, const TubView& view);

/// The whole screen for somebody who is not a keeper.
void compose_plain_tub(Composer& composer, const Model& model, const TubView& view);

}  // namespace rackside::kiosk

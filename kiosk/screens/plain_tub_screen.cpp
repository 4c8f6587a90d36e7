// The tub for somebody who is not a keeper: one thing to do, a few tiles, a way to say that
// something is wrong.

#include <algorithm>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/tub_parts.hpp"

namespace rackside::kiosk {
namespace {

void what_to_do(Composer& composer, Box& box, const TubView& view) {
  composer.rule(box);
  box.take_top(composer.mm(2));
  composer.fitted(box, view.state, Face::Bold, 9, 5, 4);
  box.take_top(composer.mm(2));
  const Style more = composer.style(Step::Instruction);
  for (const std::string& words : view.also) composer.paragraph(box, words, more, 2);
  if (view.caution) composer.paragraph(box, *view.caution, more, 3);
}

// In two columns, so that two tiles stand beside each other and four in a square.
void few_tiles(Composer& composer, const Box& box, const TubView& view) {
  const double gap = composer.mm(gap_mm);
  const std::size_t rows = std::max<std::size_t>(1, (view.tiles.size() + 1) / 2);
  const double width = (box.width - gap) / 2;
  const double room =
      (box.height - gap * static_cast<double>(rows - 1)) / static_cast<double>(rows);
  const double height = std::min(room, composer.mm(2 * usual_target_mm));
  for (std::size_t i = 0; i < view.tiles.size(); ++i) {
    const Box place{box.x + static_cast<double>(i % 2) * (width + gap),
                    box.y + static_cast<double>(i / 2) * (height + gap), width, height};
    const Tile& tile = view.tiles[i];
    composer.tile(place, tile.mark, tile.word, Record{tile.action}, Weight::Plain, tile.below);
  }
}

}  // namespace

void compose_plain_tub(Composer& composer, const Model& model, const TubView& view) {
  Box box = page(composer);
  const bool portrait = composer.panel().portrait();
  Box hands = portrait ? box.take_bottom(box.height * 0.5) : box.take_right(box.width * 0.48);
  if (portrait)
    box.take_bottom(composer.mm(4));
  else
    box.take_right(composer.mm(4));
  who_block(composer, box, view);
  what_to_do(composer, box, view);
  const Box under = hands.take_bottom(composer.mm(18));
  hands.take_bottom(composer.mm(gap_mm));
  if (view.notice || view.saving) saved_line(composer, under, view);
  const Box wrong = hands.take_bottom(composer.mm(usual_target_mm));
  hands.take_bottom(composer.mm(gap_mm));
  composer.tile(wrong, Mark::Sign, "something is wrong", Ask{AskWrong{model.tub->code}});
  few_tiles(composer, hands, view);
}

}  // namespace rackside::kiosk

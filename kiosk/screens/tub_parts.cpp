#include "kiosk/screens/tub_parts.hpp"

#include <algorithm>

#include "kiosk/screens/parts.hpp"

namespace rackside::kiosk {

void who_block(Composer& composer, Box& box, const TubView& view) {
  const Style species = composer.style(Step::Species, Face::Italic);
  const Style small = composer.style(Step::Caption);
  const Style code = composer.style(Step::Record, Face::Code);
  const double height = std::max(composer.mm(least_target_mm),
                                 composer.line_height(species) + 2 * composer.line_height(small));
  Box block = box.take_top(height);
  if (!view.neighbours.empty()) {
    composer.key(block.take_right(composer.mm(30)), view.neighbours, NextResident{});
    block.take_right(composer.mm(gap_mm));
  }
  composer.touch(block, "back to the round", Close{});
  Box arrow = block.take_left(composer.mm(6));
  const double middle = arrow.middle().y;
  composer.path({{{arrow.x + composer.mm(4), middle - composer.mm(3.4)},
                  {arrow.x + composer.mm(0.8), middle},
                  {arrow.x + composer.mm(4), middle + composer.mm(3.4)}},
                 false,
                 false,
                 composer.mm(0.9),
                 Ink::Accent});
  Box top = block.take_top(composer.line_height(small));
  composer.text(top.take_right(composer.width(view.code, code)), view.code, code, Ink::Soft);
  top.take_right(composer.mm(2));
  composer.text(top, view.place, small, Ink::Soft);
  Box name = block.take_top(composer.line_height(species));
  composer.fitted(name, view.species, Face::Italic, 4.6, 2.8, 1);
  Box line = block.take_top(composer.line_height(small));
  composer.text(line, view.who, small, Ink::Soft);
}

void saved_line(Composer& composer, Box box, const TubView& view) {
  if (view.undo) {
    composer.key(box.take_right(composer.mm(26)), "undo", Record{Action::Undo});
    box.take_right(composer.mm(gap_mm));
  }
  const Style words = composer.style(Step::Instruction, Face::Bold);
  composer.rule(box, Ink::Text);
  box.take_top(composer.mm(1));
  if (view.notice)
    composer.fitted(box, view.notice->sentence, Face::Bold, 3.8, 2.6, 4);
  else
    composer.paragraph(box, "Saving ...", words, 1, Ink::Soft);
}

}  // namespace rackside::kiosk

#include <algorithm>

#include "kiosk/screens/keyboard_part.hpp"
#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"

namespace rackside::kiosk {

void compose_find(Composer& composer, const Model& model) {
  Box box = page(composer);
  Box top = box.take_top(composer.mm(least_target_mm));
  box.take_top(composer.mm(gap_mm));
  composer.key(top.take_left(composer.mm(24)), "back", Close{});
  top.take_left(composer.mm(4));
  const bool empty = model.find_words.empty();
  composer.text(top, empty ? "code, species, name or place" : model.find_words,
                composer.style(Step::Species, empty ? Face::Regular : Face::Bold),
                empty ? Ink::Soft : Ink::Text);
  composer.rule({top.x, top.bottom() - 2, top.width, 2}, Ink::Accent);
  keyboard(composer, box, Letters::Small, Row::LeftOut);
  notice_line(composer, box, telling(model));
  if (empty || model.notice) return;
  const auto lines = view_found(model);
  if (lines.empty())
    composer.text(box, "Nothing here has all these words.", composer.style(Step::Record),
                  Ink::Soft);
  else
    tub_list(composer, box, lines, model.list_page);
}

}  // namespace rackside::kiosk

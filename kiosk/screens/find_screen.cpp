#include <algorithm>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"

namespace rackside::kiosk {
namespace {

constexpr double least_letter_mm = 9.8;

void letters(Composer& composer, Box box, std::string_view characters, double width) {
  for (const char c : characters) {
    composer.key(box.take_left(width), std::string(1, c), Typed{std::string(1, c)});
    box.take_left(composer.mm(gap_mm));
  }
}

void keyboard(Composer& composer, Box& box) {
  const double gap = composer.mm(gap_mm);
  const double height = composer.mm(composer.panel().portrait() || box.height > composer.mm(90) ? 13 : least_letter_mm);
  Box keys = box.take_bottom(4 * height + 3 * gap);
  box.take_bottom(gap);
  const double width = (keys.width - 9 * gap) / 10;
  const double step = width + gap;
  for (const std::string_view row : {"1234567890", "qwertyuiop", "asdfghjkl-"}) {
    letters(composer, keys.take_top(height), row, width);
    keys.take_top(gap);
  }
  letters(composer, keys, "zxcvbnm", width);
  keys.take_left(7 * step);
  composer.key(keys.take_left(2 * width + gap), "blank", Typed{" "});
  keys.take_left(gap);
  composer.key(keys, "←", Erase{});
}

}  // namespace

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
  keyboard(composer, box);
  notice_line(composer, box, telling(model));
  if (empty || model.notice) return;
  const auto lines = view_found(model);
  if (lines.empty())
    composer.text(box, "Nothing here has all these words.", composer.style(Step::Record), Ink::Soft);
  else
    tub_list(composer, box, lines, model.list_page);
}

}  // namespace rackside::kiosk

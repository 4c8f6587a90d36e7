#include <algorithm>
#include <array>

#include "kiosk/screens/keyboard_part.hpp"
#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"

namespace rackside::kiosk {
namespace {

// What is looked for most, by how it is: one tap instead of eight letters.
void states(Composer& composer, Box box) {
  constexpr std::array words{"due",       "overdue",     "urgent",  "premoult",
                             "hardening", "on its back", "fasting", "unseen moult"};
  const double gap = composer.mm(gap_mm);
  const double height = composer.mm(least_target_mm);
  const std::size_t columns = composer.panel().portrait() ? 3 : 4;
  const double width =
      (box.width - gap * static_cast<double>(columns - 1)) / static_cast<double>(columns);
  for (std::size_t i = 0; i < words.size(); ++i) {
    const Box key{box.x + static_cast<double>(i % columns) * (width + gap),
                  box.y + static_cast<double>(i / columns) * (height + gap), width, height};
    if (key.bottom() <= box.bottom() + 1) composer.key(key, words[i], LookFor{words[i]});
  }
}

}  // namespace

void compose_find(Composer& composer, const Model& model) {
  Box box = page(composer);
  Box top = box.take_top(composer.mm(least_target_mm));
  box.take_top(composer.mm(gap_mm));
  composer.key(top.take_left(composer.mm(24)), "back", Close{});
  top.take_left(composer.mm(4));
  const bool empty = model.find_words.empty();
  composer.text(top, empty ? "code, species, name, place or state" : model.find_words,
                composer.style(Step::Species, empty ? Face::Regular : Face::Bold),
                empty ? Ink::Soft : Ink::Text);
  composer.rule({top.x, top.bottom() - 2, top.width, 2}, Ink::Accent);
  keyboard(composer, box, Letters::Small, Row::LeftOut);
  notice_line(composer, box, telling(model));
  if (model.notice) return;
  if (empty) {
    states(composer, box);
    return;
  }
  const auto tubs = found_tubs(model.collection, model.find_words, model.plan);
  if (tubs.empty())
    composer.text(box, "Nothing here has all these words.", composer.style(Step::Record),
                  Ink::Soft);
  else
    tub_list(composer, box, model, tubs);
}

}  // namespace rackside::kiosk

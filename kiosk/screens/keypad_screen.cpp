#include <algorithm>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"

namespace rackside::kiosk {
namespace {

// Low panels have room for three rows of keys, high ones for larger keys in four.
std::size_t columns_for(const Composer& composer) {
  return composer.whole().height < composer.mm(110) ? 10 : 7;
}

// The code as it grows, in two groups of four, with a line for each place still empty.
std::string with_places(const std::string& typed) {
  std::string text;
  for (std::size_t i = 0; i < code_length; ++i) {
    if (i == code_length / 2) text += ' ';
    text += i < typed.size() ? typed[i] : '_';
  }
  return text;
}

void keys(Composer& composer, Box& box) {
  const std::size_t columns = columns_for(composer);
  const double gap = composer.mm(gap_mm);
  const auto rows = static_cast<double>((code_alphabet.size() + columns - 1) / columns);
  const double most = composer.mm(usual_target_mm) * rows + gap * (rows - 1);
  const Box pad = box.take_bottom(std::min(most, box.height - composer.mm(20)));
  box.take_bottom(gap);
  const double across = static_cast<double>(columns);
  const double width = (pad.width - gap * (across - 1)) / across;
  const double height = (pad.height - gap * (rows - 1)) / rows;
  for (std::size_t i = 0; i < code_alphabet.size(); ++i) {
    const Box key{pad.x + static_cast<double>(i % columns) * (width + gap),
                  pad.y + static_cast<double>(i / columns) * (height + gap), width, height};
    const std::string word(1, code_alphabet[i]);
    composer.key(key, word, Typed{word});
  }
}

}  // namespace

void compose_keypad(Composer& composer, const Model& model) {
  Box box = page(composer);
  Box top = box.take_top(composer.mm(least_target_mm));
  box.take_top(composer.mm(gap_mm));
  composer.key(top.take_left(composer.mm(24)), "back", Close{});
  composer.key(top.take_right(composer.mm(26)), "erase", Erase{});
  top.take_left(composer.mm(4));
  composer.text(top, with_places(model.keypad),
                style_with_capital(7.3, Face::Code, composer.panel(), composer.metrics()));
  keys(composer, box);
  if (model.notice)
    notice_line(composer, box, telling(model));
  else
    composer.paragraph(box, "The eight characters that stand beside the square on the label.",
                       composer.style(Step::Record), 2, Ink::Soft);
}

}  // namespace rackside::kiosk

#include <algorithm>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"

namespace rackside::kiosk {
namespace {

constexpr std::size_t columns = 7;

// The code as it grows, in two groups of four, with a line for each place still empty.
std::string with_places(const std::string& typed) {
  std::string text;
  for (std::size_t i = 0; i < code_length; ++i) {
    if (i == code_length / 2) text += ' ';
    text += i < typed.size() ? typed[i] : '_';
  }
  return text;
}

void keys(Composer& composer, Box box) {
  const double gap = composer.mm(gap_mm);
  const std::size_t rows = (code_alphabet.size() + columns - 1) / columns;
  const double width = (box.width - gap * (columns - 1)) / columns;
  const double height = (box.height - gap * static_cast<double>(rows - 1)) / static_cast<double>(rows);
  for (std::size_t i = 0; i < code_alphabet.size(); ++i) {
    const Box key{box.x + static_cast<double>(i % columns) * (width + gap),
                  box.y + static_cast<double>(i / columns) * (height + gap), width, height};
    const std::string word(1, code_alphabet[i]);
    composer.key(key, word, Typed{word});
  }
}

}  // namespace

void compose_keypad(Composer& composer, const Model& model) {
  Box box = page(composer);
  heading(composer, box, "type a code", "the eight characters under the square on the label");
  const double most = composer.mm(4 * usual_target_mm + 3 * gap_mm);
  Box pad = box.take_bottom(std::min(most, box.height * 0.72));
  box.take_bottom(composer.mm(gap_mm));
  notice_line(composer, box, model.notice);
  Box erase = box.take_right(composer.mm(26));
  composer.key(erase.take_bottom(std::min(erase.height, composer.mm(least_target_mm))), "erase", Erase{});
  composer.text(box, with_places(model.keypad),
                style_with_capital(model.notice ? 5 : 7.3, Face::Code, composer.panel(), composer.metrics()),
                Ink::Text);
  keys(composer, pad);
}

}  // namespace rackside::kiosk

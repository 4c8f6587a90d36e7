#include "kiosk/screens/keyboard_part.hpp"

#include "kiosk/screens/parts.hpp"

namespace rackside::kiosk {
namespace {

constexpr double least_letter_mm = 9.8;

std::string shown(char c, Letters letters) {
  if (letters == Letters::Capital && c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
  return std::string(1, c);
}

void row_of(Composer& composer, Box box, std::string_view characters, double width,
            Letters letters) {
  for (const char c : characters) {
    composer.key(box.take_left(width), shown(c, letters), Typed{std::string(1, c)});
    box.take_left(composer.mm(gap_mm));
  }
}

}  // namespace

void keyboard(Composer& composer, Box& box, Letters letters, Row writing) {
  const double gap = composer.mm(gap_mm);
  const int rows = writing == Row::Shown ? 5 : 4;
  const bool roomy = composer.panel().portrait() || box.height > composer.mm(90);
  const double height = composer.mm(roomy ? 13 : least_letter_mm);
  Box keys = box.take_bottom(rows * height + (rows - 1) * gap);
  box.take_bottom(gap);
  const double width = (keys.width - 9 * gap) / 10;
  const double step = width + gap;
  for (const std::string_view row : {"1234567890", "qwertyuiop", "asdfghjkl-"}) {
    row_of(composer, keys.take_top(height), row, width, letters);
    keys.take_top(gap);
  }
  Box last = keys.take_top(height);
  row_of(composer, last, "zxcvbnm", width, letters);
  last.take_left(7 * step);
  composer.key(last.take_left(2 * width + gap), "blank", Typed{" "});
  last.take_left(gap);
  composer.key(last, "←", Erase{});
  if (writing != Row::Shown) return;
  keys.take_top(gap);
  composer.key(keys.take_left(2 * width + gap), "capital", Shift{},
               letters == Letters::Capital ? Weight::First : Weight::Plain);
  keys.take_left(gap);
  row_of(composer, keys, ".,'()/:+", width, Letters::Small);
}

}  // namespace rackside::kiosk

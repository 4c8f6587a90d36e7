#include <algorithm>
#include <array>

#include "core/people/pin.hpp"
#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/people_view.hpp"

namespace rackside::kiosk {
namespace {

constexpr int columns = 3;
constexpr int rows = 4;
constexpr double most_key_mm = 26;

struct PadKey {
  std::string_view word;
  Intent intent;
};

const std::array<PadKey, columns * rows>& pad() {
  static const std::array<PadKey, columns * rows> keys{{
      {"1", Typed{"1"}},
      {"2", Typed{"2"}},
      {"3", Typed{"3"}},
      {"4", Typed{"4"}},
      {"5", Typed{"5"}},
      {"6", Typed{"6"}},
      {"7", Typed{"7"}},
      {"8", Typed{"8"}},
      {"9", Typed{"9"}},
      {"←", Erase{}},
      {"0", Typed{"0"}},
      {"done", Enter{}},
  }};
  return keys;
}

void keys(Composer& composer, const Box& box) {
  const double gap = composer.mm(gap_mm);
  const double width =
      std::min((box.width - (columns - 1) * gap) / columns, composer.mm(1.4 * most_key_mm));
  const double height = std::min((box.height - (rows - 1) * gap) / rows, composer.mm(most_key_mm));
  const double left = box.x + (box.width - columns * width - (columns - 1) * gap) / 2;
  for (std::size_t i = 0; i < pad().size(); ++i) {
    const Box key{left + static_cast<double>(i % columns) * (width + gap),
                  box.y + static_cast<double>(i / columns) * (height + gap), width, height};
    const bool enters = std::holds_alternative<Enter>(pad()[i].intent);
    composer.key(key, pad()[i].word, pad()[i].intent, enters ? Weight::First : Weight::Plain);
  }
}

// A filled spot for a digit that is there, a ring for one that may follow.
void spots(Composer& composer, Box box, std::size_t digits) {
  const double side = composer.mm(3.4);
  for (std::size_t i = 0; i < longest_pin; ++i) {
    const Box spot = box.take_left(side);
    if (i < digits)
      composer.fill({spot.x, spot.y + (spot.height - side) / 2, side, side}, Ink::Text);
    else
      composer.fill({spot.x, spot.y + (spot.height + side) / 2 - 2, side, 2}, Ink::Line);
    box.take_left(composer.mm(2.4));
  }
}

void words(Composer& composer, Box box, const Model& model, const PinView& view) {
  Box top = box.take_top(composer.mm(least_target_mm));
  composer.key(top.take_left(composer.mm(24)), "back", Close{});
  box.take_top(composer.mm(gap_mm));
  notice_line(composer, box, telling(model));
  composer.fitted(box, view.title, Face::Bold, 4.6, 3.4, 1);
  spots(composer, box.take_top(composer.mm(9)), view.digits);
  box.take_top(composer.mm(gap_mm));
  const std::string_view below = view.waiting ? "Looking ..." : std::string_view(view.detail);
  if (!model.notice) composer.paragraph(box, below, composer.style(Step::Record), 6, Ink::Soft);
}

}  // namespace

void compose_pin(Composer& composer, const Model& model) {
  const PinView view = view_pin(model);
  Box box = page(composer);
  Box pad_box = composer.panel().portrait() ? box.take_bottom(box.height * 0.6)
                                            : box.take_right(box.width * 0.5);
  if (!composer.panel().portrait()) box.take_right(composer.mm(2 * gap_mm));
  keys(composer, pad_box);
  words(composer, box, model, view);
}

}  // namespace rackside::kiosk

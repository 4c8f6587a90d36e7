// A number, typed.

#include <algorithm>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/map_view.hpp"

namespace rackside::kiosk {
namespace {

std::string question_words(const NumberQuestion& question, const Model& model) {
  const std::string where = question.rack.empty() ? "the room" : rack_title(question.rack);
  const AnimalState* animal = question.animal ? model.collection.animal(*question.animal) : nullptr;
  const std::string who = animal == nullptr ? "" : display_name(*animal);
  switch (question.what) {
    case NumberOf::LegSpan: return "Leg span, " + who;
    case NumberOf::Carapace: return "Carapace length, " + who;
    case NumberOf::Temperature: return "Temperature, " + where;
    case NumberOf::Humidity: return "Humidity, " + where;
  }
  return {};
}

std::string_view unit_of(NumberOf what, Units units) {
  switch (what) {
    case NumberOf::LegSpan:
    case NumberOf::Carapace: return unit_word(units.length);
    case NumberOf::Temperature: return unit_word(units.temperature);
    case NumberOf::Humidity: return "%";
  }
  return {};
}

void keys(Composer& composer, Box box) {
  constexpr std::string_view digits = "789456123.0";
  const double gap = composer.mm(gap_mm);
  const double width = (box.width - 2 * gap) / 3;
  const double height = (box.height - 3 * gap) / 4;
  const auto place = [&](std::size_t i) {
    return Box{box.x + static_cast<double>(i % 3) * (width + gap),
               box.y + static_cast<double>(i / 3) * (height + gap), width, height};
  };
  for (std::size_t i = 0; i < digits.size(); ++i) {
    const std::string word(1, digits[i]);
    composer.key(place(i), word, Typed{word});
  }
  composer.key(place(digits.size()), "←", Erase{});
}

}  // namespace

void compose_number(Composer& composer, const Model& model) {
  Box box = page(composer);
  heading(composer, box, "");
  if (!model.number) return;
  const NumberPage& number = *model.number;
  const Units units = model.rules.collection.wording.units;
  const bool upright = composer.panel().portrait();
  Box pad = upright ? box.take_bottom(std::min(box.height * 0.6, composer.mm(100)))
                    : box.take_right(std::min(box.width * 0.5, composer.mm(90)));
  if (!upright) box.take_right(composer.mm(6));
  keys(composer, pad);
  if (upright) box.take_bottom(composer.mm(gap_mm));
  composer.paragraph(box, question_words(number.question, model),
                     composer.style(Step::Instruction, Face::Bold), 3);
  box.take_top(composer.mm(2));
  const Style large = style_with_capital(7.3, Face::Code, composer.panel(), composer.metrics());
  Box typed = box.take_top(composer.line_height(large));
  const double used = composer.text(typed, number.typed + "_", large);
  typed.take_left(used + composer.mm(2));
  composer.text(typed, unit_of(number.question.what, units), composer.style(Step::Species));
  composer.key(box.take_bottom(composer.mm(usual_target_mm)), "save", Enter{}, Weight::First);
  box.take_bottom(composer.mm(gap_mm));
  notice_line(composer, box, telling(model));
}

}  // namespace rackside::kiosk

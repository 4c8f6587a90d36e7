#include <algorithm>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/setup_view.hpp"

namespace rackside::kiosk {
namespace {

constexpr double most_choice_mm = 34;

double row_height(const Composer& composer) {
  const double words =
      composer.panel().portrait() ? 2 * composer.line_height(composer.style(Step::Record)) : 0;
  return composer.mm(least_target_mm + gap_mm) + words;
}

void choices(Composer& composer, Box keys, const SetupRow& row) {
  const double gap = composer.mm(gap_mm);
  const auto count = static_cast<double>(row.choices.size());
  const double width =
      std::min((keys.width - gap * (count - 1)) / count, composer.mm(most_choice_mm));
  for (const SetupChoice& choice : row.choices) {
    composer.key(keys.take_left(width), choice.word, choice.intent,
                 choice.chosen ? Weight::First : Weight::Plain);
    keys.take_left(gap);
  }
}

// Title and what it means on the left, the keys on the right; upright panels put the words above.
void setting_row(Composer& composer, Box box, const SetupRow& row) {
  const Style title = composer.style(Step::Instruction, Face::Bold);
  const Style detail = composer.style(Step::Caption);
  composer.rule(box);
  if (composer.panel().portrait()) {
    Box words = box.take_top(2 * composer.line_height(composer.style(Step::Record)));
    const double used = composer.text(words, row.title, title);
    words.take_left(used + composer.mm(3));
    composer.text(words, row.detail, detail, Ink::Soft);
    choices(composer, box.take_top(composer.mm(least_target_mm)), row);
    return;
  }
  box.take_top(composer.mm(gap_mm) / 2);
  Box keys = box.take_right(box.width * 0.55);
  keys.height = composer.mm(least_target_mm);
  box.height = composer.mm(least_target_mm);
  box.take_right(composer.mm(gap_mm));
  choices(composer, keys, row);
  composer.text(box.take_top(composer.line_height(title)), row.title, title);
  composer.paragraph(box, row.detail, detail, 2, Ink::Soft);
}

}  // namespace

void compose_setup(Composer& composer, const Model& model) {
  const auto rows = view_setup(model, composer.panel().pixels_per_mm);
  Box box = page(composer);
  heading(composer, box, "Setup", "kept at once, for this kiosk only");
  notice_line(composer, box, telling(model));
  const Pages pages = pages_of(rows.size(), rows_in(box, row_height(composer)), model.list_page);
  page_keys(composer, box, pages);
  for (std::size_t i = pages.first; i < std::min(rows.size(), pages.first + pages.rows); ++i)
    setting_row(composer, box.take_top(row_height(composer)), rows[i]);
}

}  // namespace rackside::kiosk

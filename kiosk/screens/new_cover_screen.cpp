// Who stands in, on which days, for which racks; and a calendar to choose a day from.

#include <algorithm>

#include "kiosk/screens/form_part.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/cover_view.hpp"

namespace rackside::kiosk {
namespace {

void day_cell(Composer& composer, Box box, const DayCell& cell) {
  const Ink ground = cell.open ? Ink::Slip : Ink::Paper;
  if (cell.open) {
    composer.fill(box, Ink::Slip);
    composer.touch(box, cell.word, PickDay{cell.day});
  }
  if (cell.chosen)
    composer.rule({box.x, box.bottom() - composer.mm(1), box.width, composer.mm(1)}, Ink::Accent);
  const Ink ink = cell.open ? Ink::Text : Ink::Soft;
  box = box.inset(composer.mm(1));
  Box upper = box.take_top(box.height * 0.55);
  const Step step = cell.word.size() > 2 ? Step::Record : Step::Instruction;
  composer.text(upper, cell.word, composer.style(step, Face::Bold), ink, Align::Middle, ground);
  composer.text(box, cell.taken, composer.style(Step::Caption), ink, Align::Middle, ground);
}

}  // namespace

void compose_new_cover(Composer& composer, const Model& model) {
  Form form{.title = "A cover", .done = {"plan it", PlanCover{}}, .fields = {}};
  form.fields = view_new_cover(model);
  form_page(composer, model, form);
}

void compose_days(Composer& composer, const Model& model) {
  const auto cells = view_days(model);
  Box box = page(composer);
  const Style caption = composer.style(Step::Caption);
  const double gap = composer.mm(gap_mm);
  const double row = composer.mm(least_target_mm) + gap;
  const double heads = composer.line_height(caption) + gap;
  const auto rows = static_cast<std::size_t>(
      std::max(1.0, std::floor((box.height - heading_height(composer) - heads) / row)));
  const Pages pages = pages_of(cells.size() / days_a_week, rows, model.list_page);
  turning_heading(composer, box,
                  model.new_cover.asked == WhichDay::First ? "The first day" : "The last day", "",
                  pages);
  const double width = (box.width - gap * (days_a_week - 1)) / days_a_week;
  const auto column = [&](std::size_t i) {
    return box.x + static_cast<double>(i % days_a_week) * (width + gap);
  };
  const auto names = weekday_heads(model);
  const Box line = box.take_top(heads);
  for (std::size_t i = 0; i < names.size(); ++i)
    composer.text({column(i), line.y, width, line.height - gap}, names[i], caption, Ink::Soft,
                  Align::Middle);
  const std::size_t begin = pages.first * days_a_week;
  const std::size_t end = std::min(cells.size(), begin + pages.rows * days_a_week);
  for (std::size_t i = begin; i < end; ++i)
    day_cell(composer,
             {column(i), box.y + static_cast<double>((i - begin) / days_a_week) * row, width,
              composer.mm(least_target_mm)},
             cells[i]);
}

}  // namespace rackside::kiosk

// What to take along, before setting out.

#include <algorithm>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/round_view.hpp"

namespace rackside::kiosk {
namespace {

void prey_row(Composer& composer, Box row, const CarryPrey& prey) {
  composer.key(row.take_right(composer.mm(30)), "none here", Ask{prey.instead});
  row.take_right(composer.mm(gap_mm));
  Box words{row.x, row.y + composer.mm(1), row.width, row.height - composer.mm(1)};
  composer.fitted(words, prey.words, Face::Regular, 3.8, 2.8, 2);
}

void lines(Composer& composer, Box& box, const std::vector<std::string>& all, Style style,
           Ink ink) {
  for (const std::string& line : all) {
    composer.paragraph(box, line, style, 2, ink);
    box.take_top(composer.mm(1.2));
  }
}

double height_of(const Composer& composer, const std::vector<std::string>& all, Style style,
                 double width) {
  double height = 0;
  for (const std::string& line : all) {
    const auto rows = std::min<std::size_t>(2, composer.broken(line, style, width).size());
    height += composer.line_height(style) * static_cast<double>(rows) + composer.mm(1.2);
  }
  return height;
}

}  // namespace

void compose_carry(Composer& composer, const Model& model) {
  const CarryView view = view_carry(model);
  const Style large = composer.style(Step::Instruction), small = composer.style(Step::Record);
  Box box = page(composer);
  Box rest = box;
  rest.take_top(heading_height(composer));
  key_row(composer, rest, {{"start the round", SetOut{}, Weight::First}});
  notice_line(composer, rest, telling(model));
  const double row = composer.mm(least_target_mm + 1);
  const double also = height_of(composer, view.carry, large, rest.width) +
                      height_of(composer, view.cautions, small, rest.width) + composer.mm(1);
  // All on one page where it fits; else the prey, a page or more, and then the rest on one.
  const bool together = row * static_cast<double>(view.prey.size()) + also <= rest.height;
  const std::size_t fit =
      together ? std::max<std::size_t>(1, view.prey.size()) : rows_in(rest, row);
  const std::size_t of_prey = (view.prey.size() + fit - 1) / fit;
  const Pages pages = pages_of((of_prey + (together ? 0 : 1)) * fit, fit, model.list_page);
  turning_heading(composer, box, "Take along", "", pages);
  const std::size_t end = std::min(view.prey.size(), pages.first + pages.rows);
  for (std::size_t i = pages.first; i < end; ++i)
    prey_row(composer, rest.take_top(row), view.prey[i]);
  rest.take_top(composer.mm(1));
  if (!together && pages.page + 1 < pages.count) return;
  lines(composer, rest, view.carry, large, Ink::Text);
  lines(composer, rest, view.cautions, small, Ink::Soft);
}

}  // namespace rackside::kiosk

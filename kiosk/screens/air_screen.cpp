// The air in the room, rack by rack; a tap on a value is a new reading.

#include <algorithm>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/air_view.hpp"

namespace rackside::kiosk {
namespace {

constexpr double row_mm = 25;

void draw_line(Composer& composer, const Box& box, const AirLine& line) {
  const double limit = box.bottom() - line.wanted * box.height;
  composer.fill({box.x, limit, box.width, std::max(1.0, composer.mm(0.2))}, Ink::Line);
  Path path{.points = {}, .width = std::max(1.2, composer.mm(0.35)), .ink = Ink::Text};
  for (const auto& [x, y] : line.points)
    path.points.push_back({box.x + x * box.width, box.bottom() - y * box.height});
  if (path.points.size() > 1) composer.path(std::move(path));
}

// The last reading large, the last days as a hairline beside it, what is wanted below.
void draw_value(Composer& composer, const Box& box, const AirValue& value, std::string_view word) {
  composer.fill(box, Ink::Slip);
  Box edge = box;
  composer.fill(edge.take_bottom(composer.mm(0.9)), Ink::Accent);
  composer.touch(box, word, AskNumber{value.question});
  const Style large = composer.style(Step::Species, Face::Bold);
  const Style small = composer.style(Step::Caption);
  Box inside = box.inset(composer.mm(1.5));
  inside.take_bottom(composer.mm(0.6));
  const double line = composer.line_height(small);
  composer.text(inside.take_bottom(line), value.wanted, small, Ink::Soft, Align::Left, Ink::Slip);
  const double room = composer.width("88.8 °C", large) + composer.mm(2);
  Box words = inside.take_left(std::min(inside.width, std::max(room, inside.width * 0.45)));
  inside.take_left(composer.mm(2));
  if (inside.width > composer.mm(8)) draw_line(composer, inside, value.line);
  composer.text(words.take_top(std::min(words.height, composer.line_height(large))), value.reading,
                value.known ? large : small, value.known ? Ink::Text : Ink::Soft, Align::Left,
                Ink::Slip);
  if (words.height >= line * 0.9)
    composer.text(words.take_top(line), value.age, small, Ink::Soft, Align::Left, Ink::Slip);
}

void draw_row(Composer& composer, Box row, const AirRow& air) {
  const double gap = composer.mm(gap_mm);
  composer.rule(row);
  row.take_top(gap / 2);
  row.take_bottom(gap / 2);
  Box words = row.take_left(row.width * 0.27);
  words.take_right(gap);
  const Box left = row.take_left((row.width - gap) / 2);
  row.take_left(gap);
  draw_value(composer, left, air.temperature, "temperature, " + air.title);
  draw_value(composer, row, air.humidity, "humidity, " + air.title);
  const Style title = composer.style(Step::Instruction, Face::Bold);
  const Style small = composer.style(Step::Caption);
  composer.text(words.take_top(composer.line_height(title)), air.title, title);
  if (!air.dew.empty())
    composer.text(words.take_top(composer.line_height(small)), air.dew, small, Ink::Soft);
  composer.paragraph(words, air.off, composer.style(Step::Caption, Face::Bold), 2);
}

}  // namespace

void compose_air(Composer& composer, const Model& model) {
  Box box = page(composer);
  const auto rows = view_air(model);
  undo_line(composer, box, model);
  Box body = box;
  body.take_top(heading_height(composer));
  const std::size_t fit = rows_in(body, composer.mm(row_mm));
  const Pages pages = pages_of(rows.size(), fit, model.list_page);
  turning_heading(composer, box, "Room air", "tap a value to enter a new one", pages);
  const double height = std::min(composer.mm(row_mm + 8), box.height / static_cast<double>(fit));
  for (std::size_t i = pages.first; i < std::min(rows.size(), pages.first + pages.rows); ++i)
    draw_row(composer, box.take_top(height), rows[i]);
}

}  // namespace rackside::kiosk

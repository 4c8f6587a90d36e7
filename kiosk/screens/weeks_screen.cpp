// The weeks ahead: a row an animal, a column a week.

#include <algorithm>
#include <cmath>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/weeks_view.hpp"

namespace rackside::kiosk {
namespace {

constexpr double week = 7;

struct Calendar {
  Box box;  // of the columns
  double today = 0;

  [[nodiscard]] double column() const { return box.width / weeks_shown; }
  [[nodiscard]] double x(double day) const {
    return box.x + std::clamp(day, 0.0, week * weeks_shown) / week * column();
  }
};

double head_height(const Composer& composer) {
  return 3 * composer.line_height(composer.style(Step::Caption)) + composer.mm(7);
}

// Months, Mondays, and how many moults are to be expected, as columns and in figures.
void draw_head(Composer& composer, Box box, const WeeksView& view, const Calendar& calendar) {
  const Style caption = composer.style(Step::Caption);
  const Style digits = composer.style(Step::Caption, Face::Code);
  const double line = composer.line_height(caption);
  Box names{box.x, box.y, calendar.box.x - box.x - composer.mm(2), box.height};
  names.take_top(line);
  composer.text(names.take_top(line), "week from", caption, Ink::Soft);
  composer.paragraph(names, "moults to expect", caption, 2, Ink::Soft);
  double most = 1;
  for (const WeekColumn& column : view.weeks) most = std::max(most, column.expected);
  for (std::size_t i = 0; i < view.weeks.size(); ++i) {
    const WeekColumn& column = view.weeks[i];
    Box place{calendar.box.x + static_cast<double>(i) * calendar.column(), box.y, calendar.column(),
              box.height};
    place.take_left(composer.mm(0.8));
    composer.text(place.take_top(line), column.month, caption);
    composer.text(place.take_top(line), column.day, digits);
    composer.text(place.take_bottom(line), column.expected_words, digits);
    const double height = place.height * column.expected / most;
    composer.fill({place.x, place.bottom() - height, place.width - composer.mm(1.2), height},
                  Ink::Wash);
  }
}

void draw_weeks(Composer& composer, const Calendar& calendar) {
  const double thin = std::max(1.0, composer.mm(0.2));
  for (std::size_t i = 0; i <= weeks_shown; ++i)
    composer.fill({calendar.box.x + static_cast<double>(i) * calendar.column() - thin / 2,
                   calendar.box.y, thin, calendar.box.height},
                  Ink::Line);
  composer.fill({calendar.x(calendar.today) - 1, calendar.box.y, 2, calendar.box.height},
                Ink::Accent);
}

// An end that lies outside is told by an arrow head.
void arrow(Composer& composer, Spot at, double way) {
  const double size = composer.mm(1.6);
  composer.path({{{at.x - way * size, at.y - size}, at, {at.x - way * size, at.y + size}},
                 false,
                 false,
                 composer.mm(0.5),
                 Ink::Text});
}

void draw_range(Composer& composer, const Box& row, const WeekRow& line, const Calendar& calendar) {
  const double y = row.middle().y;
  const double thin = composer.mm(0.5);
  const auto bar = [&](double from, double to, double weight, Ink ink) {
    const double left = calendar.x(from);
    composer.fill({left, y - weight / 2, std::max(thin, calendar.x(to) - left), weight}, ink);
  };
  bar(line.q05, line.q95, thin, Ink::Text);
  bar(line.q25, line.q75, composer.mm(4), Ink::Wash);
  bar(line.q25, line.q75, thin, Ink::Text);
  const double end = week * weeks_shown;
  if (line.q95 > end) arrow(composer, {calendar.box.right(), y}, 1);
  if (line.q05 < 0) arrow(composer, {calendar.box.x, y}, -1);
  if (line.median >= 0 && line.median <= end)
    composer.fill({calendar.x(line.median) - thin, y - composer.mm(3), 2 * thin, composer.mm(6)},
                  Ink::Text);
}

void draw_row(Composer& composer, Box row, const WeekRow& line, const Calendar& calendar) {
  composer.rule(row);
  if (line.tub) composer.touch(row, line.tub->grouped(), OpenTub{*line.tub});
  draw_range(composer, row, line, calendar);
  Box words{row.x, row.y + composer.mm(0.6), calendar.box.x - row.x - composer.mm(2),
            row.height - composer.mm(0.8)};
  composer.text(words.take_top(words.height * 0.55), line.species,
                composer.style(Step::Instruction, Face::Italic));
  const Style code = composer.style(Step::Caption, Face::Code);
  const double used = composer.text(words, line.place, code, Ink::Accent);
  words.take_left(used + composer.mm(2));
  composer.text(words, line.unseen, composer.style(Step::Caption));
}

}  // namespace

void compose_weeks(Composer& composer, const Model& model) {
  Box box = page(composer);
  if (!model.overview_known) {
    heading(composer, box, "Weeks ahead");
    composer.text(box.take_top(composer.mm(10)), "Looking through the records ...",
                  composer.style(Step::Instruction), Ink::Soft);
    return;
  }
  const WeeksView view = view_weeks(model);
  Box body = box;
  body.take_top(heading_height(composer));
  Box head = body.take_top(head_height(composer));
  const Pages pages =
      pages_of(view.animals.size(), rows_in(body, tub_row_height(composer)), model.list_page);
  turning_heading(composer, box, "Weeks ahead", view.summary, pages);
  const double names = std::max(composer.mm(44), box.width * 0.34);
  const Calendar calendar{{box.x + names, head.bottom(), box.width - names, body.height},
                          view.today};
  draw_head(composer, head, view, calendar);
  draw_weeks(composer, calendar);
  for (std::size_t i = pages.first; i < std::min(view.animals.size(), pages.first + pages.rows);
       ++i)
    draw_row(composer, body.take_top(tub_row_height(composer)),
             view_week_row(model, view.animals[i]), calendar);
  if (view.animals.empty())
    composer.text(body.take_top(composer.mm(10)), "No moult is expected in these weeks.",
                  composer.style(Step::Instruction), Ink::Soft);
}

}  // namespace rackside::kiosk

// How the open animal grew: drawn, and as a table.

#include <algorithm>
#include <cmath>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/growth_view.hpp"

namespace rackside::kiosk {
namespace {

struct Axes {
  Box box;
  double steps = 1;
  double most = 1;  // millimetres

  [[nodiscard]] Spot at(double step, double size) const {
    return {box.x + (step + 0.5) / steps * box.width, box.bottom() - size / most * box.height};
  }
};

void dot(Composer& composer, Spot at, double radius, bool filled) {
  std::vector<Spot> ring;
  for (int i = 0; i < 16; ++i)
    ring.push_back({at.x + radius * std::cos(i * 0.3927), at.y + radius * std::sin(i * 0.3927)});
  composer.path({std::move(ring), true, filled, std::max(1.5, composer.mm(0.4)), Ink::Text});
}

void draw_curve(Composer& composer, const GrowthCurve& curve, const Axes& axes) {
  Path line{.points = {}, .width = std::max(1.5, composer.mm(0.4)), .ink = Ink::Text};
  for (const auto& each : curve.dots) {
    const Spot spot = axes.at(static_cast<double>(each.step), each.size);
    if (each.plausible) line.points.push_back(spot);
    dot(composer, spot, composer.mm(1.1), each.plausible);
  }
  const Spot last = axes.at(static_cast<double>(curve.dots.back().step), curve.dots.back().size);
  if (line.points.size() > 1) composer.path(std::move(line));
  if (curve.next) dot(composer, axes.at(axes.steps - 1, *curve.next), composer.mm(1.1), false);
  const Style small = composer.style(Step::Caption);
  const double height = composer.line_height(small);
  const double width = composer.width(curve.word, small);
  const double x =
      std::clamp(last.x - width - composer.mm(2), axes.box.x, axes.box.right() - width);
  composer.text({x, std::max(axes.box.y, last.y - height - composer.mm(1)), width + 1, height},
                curve.word, small, Ink::Soft);
}

void drawing(Composer& composer, Box box, const GrowthView& view) {
  const Style small = composer.style(Step::Caption);
  composer.text(box.take_bottom(composer.line_height(small)),
                "moult by moult; open dot: the next, if it goes on like this", small, Ink::Soft);
  Axes axes{box, static_cast<double>(view.steps) + 1, 1};
  for (const GrowthCurve& curve : view.curves) {
    for (const auto& each : curve.dots) axes.most = std::max(axes.most, each.size * 1.12);
    if (curve.next) axes.most = std::max(axes.most, *curve.next * 1.12);
  }
  composer.rule({box.x, box.bottom(), box.width, 1}, Ink::Text);
  for (std::size_t i = 0; i <= view.steps; ++i)
    composer.fill({axes.at(static_cast<double>(i), 0).x, box.bottom() - composer.mm(1.2),
                   std::max(1.0, composer.mm(0.25)), composer.mm(1.2)},
                  Ink::Text);
  for (const GrowthCurve& curve : view.curves) draw_curve(composer, curve, axes);
}

void table(Composer& composer, Box box, const GrowthView& view, const Pages& pages) {
  const Style small = composer.style(Step::Record);
  const Style digits = composer.style(Step::Record, Face::Code);
  const double line = composer.line_height(small) + composer.mm(1.2);
  // A column for what nobody knows would only take the room of the dates.
  const bool instars =
      std::ranges::any_of(view.rows, [](const GrowthRow& row) { return !row.instar.empty(); });
  const auto columns = [&](Box row, const GrowthRow& words, Style style, Ink ink) {
    const double width = row.width;
    composer.text(row.take_left(width * 0.37), words.moult, small, ink);
    composer.text(row.take_left(width * (instars ? 0.13 : 0)), instars ? words.instar : "", style,
                  ink, Align::Right);
    composer.text(row.take_left(row.width / 2), words.leg_span, style, ink, Align::Right);
    composer.text(row, words.carapace, style, ink, Align::Right);
  };
  columns(box.take_top(line), {"moult", "instar", "leg span", "carapace"}, small, Ink::Soft);
  for (std::size_t i = pages.first; i < std::min(view.rows.size(), pages.first + pages.rows); ++i) {
    const Box row = box.take_top(line);
    composer.rule(row);
    columns(row, view.rows[i], digits, Ink::Text);
  }
}

}  // namespace

void compose_growth(Composer& composer, const Model& model) {
  const GrowthView view = view_growth(model);
  Box box = page(composer);
  undo_line(composer, box, model);
  if (view.can_measure && !telling(model))
    key_row(composer, box,
            {{"measure leg span", AskNumber{view.leg_span}, Weight::First},
             {"measure carapace", AskNumber{view.carapace}}});
  Box body = box;
  body.take_top(heading_height(composer));
  const bool upright = composer.panel().portrait();
  Box left = upright ? body.take_top(body.height * 0.5) : body.take_left(body.width * 0.5);
  if (!upright) body.take_left(composer.mm(4));
  const double line = composer.line_height(composer.style(Step::Record)) + composer.mm(1.2);
  const std::size_t fit = rows_in({0, 0, 0, body.height - line}, line);
  const Pages pages = pages_of(view.rows.size(), fit, model.list_page);
  turning_heading(composer, box, view.title, "growth", pages);
  for (const std::string& sentence : view.sentences)
    if (left.height > composer.mm(42))
      composer.paragraph(left, sentence, composer.style(Step::Caption), 3);
  if (view.curves.empty())
    composer.paragraph(left, "Never measured. The shed gives both: spread it on a ruler.",
                       composer.style(Step::Instruction), 3, Ink::Soft);
  else
    drawing(composer, left, view);
  table(composer, body, view, pages);
}

}  // namespace rackside::kiosk

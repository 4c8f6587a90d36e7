#include <algorithm>
#include <cmath>

#include "kiosk/screens/parts.hpp"

namespace rackside::kiosk {
namespace {

struct Scale {
  double left;
  double pixels_per_day;

  [[nodiscard]] double x(double day) const { return left + day * pixels_per_day; }
};

// Marks that would overlap are thinned to the latest of each place, so that a long cycle stays
// a row of marks and not a bar of ink.
std::vector<StripMark> thinned(std::vector<StripMark> marks, double least_days) {
  std::ranges::stable_sort(marks, {}, &StripMark::day);
  std::vector<StripMark> kept;
  for (auto mark = marks.rbegin(); mark != marks.rend(); ++mark) {
    const bool crowded = std::ranges::any_of(kept, [&](const StripMark& other) {
      return other.above == mark->above && std::abs(other.day - mark->day) < least_days;
    });
    if (!crowded) kept.push_back(*mark);
  }
  return kept;
}

void draw_marks(Composer& composer, const std::vector<StripMark>& marks, const Scale& scale,
                double line_y, double side) {
  for (const StripMark& mark : thinned(marks, side * 1.05 / scale.pixels_per_day)) {
    const double y = mark.above ? line_y - side - composer.mm(0.8) : line_y + composer.mm(0.8);
    const Box box{scale.x(mark.day) - side / 2, y, side, side};
    if (mark.landed)
      composer.landing_mark(mark.mark, box, *mark.landed);
    else
      composer.mark(mark.mark, box);
  }
}

// A line as fine as the panel shows: a forecast may have a point a day for years, and drawing each
// of thousands takes half a second.
class FineLine {
 public:
  void add(Spot spot) {
    if (points_.size() > 1 && spot.x - points_[points_.size() - 2].x < least_step)
      points_.pop_back();
    points_.push_back(spot);
  }
  [[nodiscard]] std::vector<Spot> take() && { return std::move(points_); }

 private:
  static constexpr double least_step = 1.5;  // px
  std::vector<Spot> points_;
};

void draw_density(Composer& composer, const StripDensity& density, const Scale& scale,
                  double line_y, double height) {
  const double highest = *std::ranges::max_element(density.density);
  FineLine line;
  for (std::size_t i = 0; i < density.day.size(); ++i)
    line.add({scale.x(density.day[i]), line_y - height * density.density[i] / highest});
  Path curve{.points = std::move(line).take(),
             .closed = true,
             .filled = true,
             .width = 1,
             .ink = Ink::Wash};
  curve.points.insert(curve.points.begin(), {curve.points.front().x, line_y});
  curve.points.push_back({curve.points.back().x, line_y});
  Path outline = curve;
  outline.closed = false;
  outline.filled = false;
  outline.width = std::max(1.5, composer.mm(0.3));
  outline.ink = Ink::Text;
  composer.path(std::move(curve));
  composer.path(std::move(outline));
}

// The 50 % and 90 % ranges as brackets under the line, the median as a tick across it.
void draw_brackets(Composer& composer, const StripDensity& density, const Scale& scale,
                   double line_y) {
  const double thin = std::max(1.0, composer.mm(0.25));
  const auto bracket = [&](double from, double to, double depth, double weight) {
    composer.fill(
        {scale.x(from), line_y + depth, std::max(weight, scale.x(to) - scale.x(from)), weight},
        Ink::Text);
    for (const double day : {from, to})
      composer.fill(
          {scale.x(day) - weight / 2, line_y + depth - composer.mm(1), weight, composer.mm(1)},
          Ink::Text);
  };
  bracket(density.q05, density.q95, composer.mm(2.2), thin);
  bracket(density.q25, density.q75, composer.mm(1.6), 2 * thin);
  composer.fill({scale.x(density.median) - thin, line_y - composer.mm(2), 2 * thin, composer.mm(4)},
                Ink::Text);
}

void draw_cycle(Composer& composer, Box box, const StripCycle& cycle, const Scale& scale) {
  const double y = box.middle().y;
  composer.fill(
      {scale.x(0), y, cycle.length * scale.pixels_per_day, std::max(1.0, composer.mm(0.2))},
      Ink::Line);
  for (const double day : {0.0, cycle.length})
    composer.fill(
        {scale.x(day), box.y + box.height * 0.2, std::max(1.0, composer.mm(0.3)), box.height * 0.6},
        Ink::Line);
  for (const StripMark& mark : cycle.marks) {
    const double tick = box.height * 0.28;
    composer.fill(
        {scale.x(mark.day), mark.above ? y - tick : y, std::max(1.0, composer.mm(0.2)), tick},
        Ink::Line);
  }
}

// Between what stands above the line and the top, up to today.
void draw_warmth(Composer& composer, const StripWarmth& warmth, const Scale& scale,
                 const Box& band) {
  FineLine line;
  for (std::size_t i = 0; i < warmth.day.size(); ++i)
    line.add({scale.x(warmth.day[i]), band.bottom() - band.height * warmth.part[i]});
  composer.path({.points = std::move(line).take(),
                 .width = std::max(1.0, composer.mm(0.2)),
                 .ink = Ink::Soft});
}

}  // namespace

void moult_strip(Composer& composer, Box box, const StripView& view) {
  const Style caption = composer.style(Step::Caption);
  const double side = composer.mm(3.4);
  if (!view.words.empty())
    composer.text(box.take_bottom(composer.line_height(caption)), view.words, caption);
  Box top = box.take_top(composer.line_height(caption));
  top.take_right(composer.mm(18));  // others may write there
  composer.text(top, view.warmth ? view.begins + ", " + view.warmth->words : view.begins, caption,
                Ink::Soft);
  const Scale scale{box.x + side / 2, (box.width - side) / view.length};
  const double faint = composer.mm(2.6);
  for (auto cycle = view.before.rbegin(); cycle != view.before.rend(); ++cycle)
    if (box.height > composer.mm(14) + faint)
      draw_cycle(composer, box.take_bottom(faint), *cycle, scale);
  const double below = side + composer.mm(1.6);
  const double line_y = box.bottom() - below;
  const double height = line_y - box.y - composer.mm(1);
  if (view.density)
    draw_density(composer, *view.density, scale, line_y, std::max(composer.mm(5), height * 0.9));
  const double room = line_y - box.y - side - composer.mm(1.6);
  const double warm = std::min(room, composer.mm(8));
  if (view.warmth && warm > composer.mm(4))
    draw_warmth(composer, *view.warmth, scale, {box.x, box.y + room - warm, box.width, warm});
  composer.fill({box.x, line_y, box.width, std::max(1.0, composer.mm(0.35))}, Ink::Text);
  composer.fill(
      {scale.x(0) - 1, line_y - composer.mm(3), std::max(2.0, composer.mm(0.4)), composer.mm(6)},
      Ink::Text);
  if (view.density) draw_brackets(composer, *view.density, scale, line_y);
  for (const StripRun& run : view.runs)
    composer.fill({scale.x(run.from), line_y - side - composer.mm(1.3),
                   (run.to - run.from) * scale.pixels_per_day, std::max(1.0, composer.mm(0.3))},
                  Ink::Text);
  draw_marks(composer, view.marks, scale, line_y, side);
  // Today, as a plumb line with its bob.
  const double today = scale.x(view.today);
  composer.fill({today - 1, box.y, 2, box.height}, Ink::Accent);
  composer.path({{{today - composer.mm(1), box.y},
                  {today + composer.mm(1), box.y},
                  {today, box.y + composer.mm(2)}},
                 true,
                 true,
                 1,
                 Ink::Accent});
}

void small_moult_strip(Composer& composer, const Box& box, const SmallStrip& strip) {
  const double y = box.middle().y;
  const auto part = [&](double from, double to, double high, Ink ink) {
    const double height = std::max(1.0, composer.mm(high));
    const double width = std::max(2.0, box.width * (to - from));
    const double x = std::min(box.x + box.width * from, box.right() - width);
    composer.fill({x, y - height / 2, width, height}, ink);
  };
  part(0, 1, 0.2, Ink::Line);
  part(0, 0, 2.4, Ink::Soft);
  part(strip.q05, strip.q95, 0.4, Ink::Soft);
  part(strip.q25, strip.q75, 1.2, Ink::Soft);
  part(strip.today, strip.today, 4, Ink::Accent);
}

}  // namespace rackside::kiosk

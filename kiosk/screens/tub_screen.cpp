#include <algorithm>
#include <cmath>
#include <numeric>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/screens/tub_parts.hpp"

namespace rackside::kiosk {
namespace {

constexpr std::size_t most_reasons = 3;

void state_block(Composer& composer, Box& box, const TubView& view) {
  composer.rule(box);
  box.take_top(composer.mm(1.2));
  composer.fitted(box, view.state, Face::Bold, 7.3, 4.6, 2);
  box.take_top(composer.mm(0.8));
  const Style task = composer.style(Step::Instruction, Face::Bold);
  if (view.urgent) {
    const double side = composer.line_height(task);
    composer.mark(Mark::Sign, {box.x, box.y, side, side});
    Box rest = box;
    rest.take_left(side + composer.mm(1.5));
    const double before = rest.height;
    composer.paragraph(rest, view.task, task, 2);
    box.take_top(before - rest.height);
  } else {
    composer.paragraph(box, view.task, task, 2);
  }
  const Style also = composer.style(Step::Record);
  for (const std::string& words : view.also)
    if (box.height > composer.mm(26)) composer.paragraph(box, "also: " + words, also, 1);
  if (view.caution) composer.paragraph(box, *view.caution, also, 2);
}

// The strip is one cycle of a life that is told behind it.
void way_to_growth(Composer& composer, const Box& strip) {
  if (strip.height < composer.mm(least_target_mm)) return;
  const Style words = composer.style(Step::Caption, Face::Bold);
  composer.text({strip.x, strip.y, strip.width, composer.line_height(words)}, "growth ›", words,
                Ink::Accent, Align::Right);
  composer.touch(strip, "growth", Show{ScreenName::Growth});
}

// Every reason gets a line while there is room, in order; then those that are too long for theirs a
// second one.
std::vector<std::size_t> lines_for_each(const Composer& composer,
                                        const std::vector<std::string>& texts, Style style,
                                        double width, std::size_t room) {
  std::vector<std::size_t> shares(std::min(texts.size(), most_reasons), 0);
  for (std::size_t round = 1; round <= 2; ++round)
    for (std::size_t i = 0; i < shares.size(); ++i)
      if (room > 0 && composer.broken(texts[i], style, width).size() >= round) {
        ++shares[i];
        --room;
      }
  return shares;
}

void why_and_strip(Composer& composer, Box box, const TubView& view) {
  const Style small = composer.style(Step::Caption);
  const double line = composer.line_height(small);
  const double strip = view.strip ? composer.mm(21) : 0;
  const auto room = static_cast<std::size_t>(std::max(0.0, (box.height - strip) / line));
  const auto shares = lines_for_each(composer, view.why, small, box.width, room);
  const std::size_t lines = std::accumulate(shares.begin(), shares.end(), std::size_t{0});
  Box why = box.take_bottom(line * static_cast<double>(lines));
  for (std::size_t i = 0; i < shares.size(); ++i) {
    if (shares[i] == 0) continue;
    Box part = why.take_top(line * static_cast<double>(shares[i]));
    composer.paragraph(part, view.why[i], small, shares[i], Ink::Soft);
  }
  if (!view.strip || box.height < composer.mm(14)) return;
  box.take_top(composer.mm(1));
  box.take_bottom(composer.mm(1));
  const double most = composer.mm(50);
  if (box.height > most) box.take_top(box.height - most);
  moult_strip(composer, box, *view.strip);
  way_to_growth(composer, box);
}

struct Grid {
  std::size_t columns;
  std::size_t rows;
  [[nodiscard]] std::size_t places() const { return columns * rows; }
};

Grid grid_of(const Composer& composer, const Box& box) {
  const double gap = composer.mm(gap_mm);
  const auto fit = [&](double size, double each) {
    return static_cast<std::size_t>(std::max(1.0, std::floor((size + gap) / (each + gap))));
  };
  return {fit(box.width, composer.mm(usual_target_mm)), fit(box.height, composer.mm(17))};
}

void tile_grid(Composer& composer, const Box& box, const TubView& view, int wanted_page) {
  const Grid grid = grid_of(composer, box);
  const bool all = view.tiles.size() <= grid.places();
  const std::size_t per_page = all ? view.tiles.size() : grid.places() - 1;
  if (per_page == 0) return;
  const std::size_t count = (view.tiles.size() + per_page - 1) / per_page;
  const std::size_t first = static_cast<std::size_t>(wanted_page) % count * per_page;
  const double gap = composer.mm(gap_mm);
  const double width =
      (box.width - gap * static_cast<double>(grid.columns - 1)) / static_cast<double>(grid.columns);
  const double height =
      (box.height - gap * static_cast<double>(grid.rows - 1)) / static_cast<double>(grid.rows);
  const auto place = [&](std::size_t i) {
    return Box{box.x + static_cast<double>(i % grid.columns) * (width + gap),
               box.y + static_cast<double>(i / grid.columns) * (height + gap), width, height};
  };
  for (std::size_t i = 0; i < per_page && first + i < view.tiles.size(); ++i) {
    const Tile& tile = view.tiles[first + i];
    composer.tile(place(i), tile.mark, tile.word, Record{tile.action},
                  tile.first ? Weight::First : Weight::Plain, tile.below);
  }
  if (!all) composer.tile(place(grid.places() - 1), Mark::None, "more", TurnTiles{});
}

void latest_records(Composer& composer, Box box, const TubView& view) {
  composer.touch(box, "records", Show{ScreenName::Records});
  const double line =
      std::max(composer.line_height(composer.style(Step::Record)), composer.mm(4.8));
  for (const RecordLine& record : view.records) {
    if (box.height < line) return;
    record_line(composer, box.take_top(line), record);
  }
}

void right_side(Composer& composer, Box box, const TubView& view, int tile_page) {
  const bool telling = view.notice || view.saving;
  const double line =
      std::max(composer.line_height(composer.style(Step::Record)), composer.mm(4.8));
  const double bottom = std::max(composer.mm(18), std::min(5 * line, box.height * 0.24));
  Box under = box.take_bottom(bottom);
  box.take_bottom(composer.mm(gap_mm));
  if (telling)
    saved_line(composer, under, view);
  else
    latest_records(composer, under, view);
  tile_grid(composer, box, view, tile_page);
}

}  // namespace

void compose_tub(Composer& composer, const Model& model) {
  const TubView view = view_tub(model);
  if (view.plain) return compose_plain_tub(composer, model, view);
  Box box = page(composer);
  const double gap = composer.mm(4);
  Box hands = composer.panel().portrait() ? box.take_bottom(box.height * 0.52)
                                          : box.take_right(box.width * 0.44);
  if (composer.panel().portrait())
    box.take_bottom(gap);
  else
    box.take_right(gap);
  who_block(composer, box, view);
  state_block(composer, box, view);
  why_and_strip(composer, box, view);
  right_side(composer, hands, view, model.tub->tile_page);
}

}  // namespace rackside::kiosk

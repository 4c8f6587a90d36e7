// The shelf map: the racks as they stand, a cell a tub.

#include <algorithm>
#include <cmath>
#include <map>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/map_view.hpp"

namespace rackside::kiosk {
namespace {

constexpr double cell_gap_mm = 1;
// Two letters of 9 mm, which is read from two metres (16 minutes of arc, ISO 9241-3), need a cell
// of 24; with 17 they have 6 mm, which sharp eyes still read from there. A rack that would need
// smaller cells to stand on one page gets several, but for panels that hang within reach.
constexpr double largest_cell_mm = 26;
constexpr double least_readable_cell_mm = 17;
constexpr double paged_cell_mm = 24;
constexpr double hangs_within_reach_mm = 120;  // its shorter side
constexpr double shelf_name_mm = 13;
constexpr double key_words_mm = 6;  // of the legend, a line

// A run of places of one shelf that stands in one row of the screen.
struct MapRow {
  std::string shelf;  // named in its first row only
  const MapShelf* of = nullptr;
  std::size_t first = 0;
  std::size_t count = 0;
};

struct MapGrid {
  std::size_t columns = 1;
  std::size_t rows = 1;
};

std::vector<MapRow> rows_of(const std::vector<MapShelf>& shelves, std::size_t columns) {
  std::vector<MapRow> rows;
  for (const MapShelf& shelf : shelves)
    for (std::size_t first = 0; first < shelf.places.size(); first += columns)
      rows.push_back({first == 0 ? shelf.shelf : "", &shelf, first,
                      std::min(columns, shelf.places.size() - first)});
  return rows;
}

MapGrid grid_for(const Composer& composer, const Box& box, double cell) {
  const double gap = composer.mm(cell_gap_mm);
  const auto fit = [&](double room) {
    return static_cast<std::size_t>(
        std::max(1.0, std::floor((room + gap) / (composer.mm(cell) + gap))));
  };
  return {fit(box.width - composer.mm(shelf_name_mm)), fit(box.height)};
}

// The largest cells with which the whole rack is on one page; else several pages.
MapGrid grid_of(const Composer& composer, const Box& box, const std::vector<MapShelf>& shelves) {
  const Panel& panel = composer.panel();
  const bool near = std::min(panel.width, panel.height) < panel.mm(hangs_within_reach_mm);
  const double least = near ? least_target_mm : least_readable_cell_mm;
  for (double cell = largest_cell_mm; cell > least; cell -= 1) {
    const MapGrid grid = grid_for(composer, box, cell);
    if (rows_of(shelves, grid.columns).size() <= grid.rows) return grid;
  }
  return grid_for(composer, box, near ? least_target_mm : paged_cell_mm);
}

bool holds(const MapRow& row, const Code& tub) {
  const auto begin = row.of->places.begin() + static_cast<std::ptrdiff_t>(row.first);
  return std::any_of(begin, begin + static_cast<std::ptrdiff_t>(row.count),
                     [&](const auto& place) { return place == tub; });
}

// Until somebody turns the pages, the map shows the shelf that was scanned, or the last tub.
std::size_t row_wanted(const std::vector<MapRow>& rows, const Model& model) {
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (model.map.shelf && rows[i].of->shelf == *model.map.shelf) return i;
    if (!model.map.shelf && model.last_tub && holds(rows[i], *model.last_tub)) return i;
  }
  return 0;
}

void outline(Composer& composer, Box box, double width) {
  composer.fill(box.take_top(width), Ink::Text);
  composer.fill(box.take_bottom(width), Ink::Text);
  composer.fill(box.take_left(width), Ink::Text);
  composer.fill(box.take_right(width), Ink::Text);
}

void draw_cell(Composer& composer, const Box& box, const Code& tub, const MapCell& cell) {
  composer.fill(box, Ink::Slip);
  composer.touch(box, tub.grouped(), OpenTub{tub});
  if (cell.due) composer.fill({box.x, box.y, composer.mm(1.3), box.height}, Ink::Text);
  if (cell.last) outline(composer, box, composer.mm(0.9));
  Box inside = box.inset(composer.mm(1.5));
  inside.take_left(composer.mm(0.6));
  Box letters = inside.take_bottom(inside.height * 0.68);
  double capital = std::min(9.3, letters.height / composer.mm(1) * 0.62);
  const auto style = [&] {
    return style_with_capital(capital, Face::Bold, composer.panel(), composer.metrics());
  };
  while (capital > 2.8 && composer.width("Mo", style()) > letters.width) capital -= 0.2;
  composer.text(letters, cell.letters, style(), Ink::Text, Align::Left, Ink::Slip);
  const double side = std::min(inside.height, inside.width * 0.45);
  composer.mark(cell.mark, {inside.x, inside.y, side, side});
  inside.take_left(side + composer.mm(0.5));
  composer.text(inside, cell.position, composer.style(Step::Caption, Face::Regular), Ink::Text,
                Align::Right, Ink::Slip);
}

using Legend = std::map<std::string, std::string>;

void draw_row(Composer& composer, Box row, const MapRow& of, const MapGrid& grid,
              const Model& model, Legend& legend) {
  const Box name = row.take_left(composer.mm(shelf_name_mm));
  if (!of.shelf.empty())
    composer.text({name.x, name.y, name.width - composer.mm(1.5), name.height}, of.shelf,
                  composer.style(Step::Species, Face::Code));
  const double gap = composer.mm(cell_gap_mm);
  const auto columns = static_cast<double>(grid.columns);
  const double width = (row.width - gap * (columns - 1)) / columns;
  for (std::size_t i = 0; i < of.count; ++i) {
    const Box box = row.take_left(width);
    row.take_left(gap);
    const auto& place = of.of->places[of.first + i];
    if (!place) continue;
    const MapCell cell = view_cell(model, *place);
    draw_cell(composer, box, *place, cell);
    if (!cell.letters.empty()) legend.emplace(cell.letters, cell.word);
  }
}

// What the letters on this page mean.
void draw_legend(Composer& composer, Box box, const Legend& legend) {
  const Style bold = composer.style(Step::Caption, Face::Bold);
  const Style words = composer.style(Step::Caption);
  const double line = composer.mm(key_words_mm);
  Box row = box.take_top(line);
  const auto put = [&](std::string_view letters, std::string_view word) {
    const double key = std::max(composer.width(letters, bold), composer.mm(1.3));
    const double needed = key + composer.width(word, words) + composer.mm(4);
    if (needed > row.width) {
      if (box.height < line * 0.9) return;
      row = box.take_top(line);
    }
    Box entry = row.take_left(needed);
    const Box sign = entry.take_left(key);
    if (letters.empty())
      composer.fill({sign.x, sign.y + sign.height * 0.15, composer.mm(1.3), sign.height * 0.7},
                    Ink::Text);
    else
      composer.text(sign, letters, bold);
    entry.take_left(composer.mm(1.5));
    composer.text(entry, word, words, Ink::Soft);
  };
  put("", "due today");
  for (const auto& [letters, word] : legend) put(letters, word);
}

void all_racks(Composer& composer, Box box, const Model& model) {
  const auto lines = view_racks(model);
  const double gap = composer.mm(gap_mm);
  const std::size_t columns = composer.panel().portrait() ? 2 : 3;
  const double height = composer.mm(20);
  Box rest = box;
  rest.take_top(heading_height(composer));
  const std::size_t rows = rows_in(rest, height + gap);
  const Pages pages = pages_of(lines.size(), rows * columns, model.list_page);
  turning_heading(composer, box, "Shelf map", "", pages);
  notice_line(composer, box, telling(model));
  const double width =
      (box.width - gap * static_cast<double>(columns - 1)) / static_cast<double>(columns);
  for (std::size_t i = pages.first; i < std::min(lines.size(), pages.first + pages.rows); ++i) {
    const std::size_t at = i - pages.first;
    const Box tile{box.x + static_cast<double>(at % columns) * (width + gap),
                   box.y + static_cast<double>(at / columns) * (height + gap), width, height};
    if (!box.holds(tile)) return;
    composer.titled_key(tile, lines[i].title, lines[i].detail, OpenRack{lines[i].rack, {}});
  }
}

}  // namespace

void compose_map(Composer& composer, const Model& model) {
  Box box = page(composer);
  if (!model.map.rack) {
    all_racks(composer, box, model);
    return;
  }
  const auto shelves = view_rack(model, *model.map.rack);
  Box cells = box;
  cells.take_top(heading_height(composer));
  Box legend_box =
      cells.take_bottom(composer.mm(key_words_mm * (composer.panel().portrait() ? 3 : 2)));
  cells.take_bottom(composer.mm(1));
  const MapGrid grid = grid_of(composer, cells, shelves);
  const auto rows = rows_of(shelves, grid.columns);
  const int wanted =
      model.list_turned ? model.list_page : static_cast<int>(row_wanted(rows, model) / grid.rows);
  const Pages pages = pages_of(rows.size(), grid.rows, wanted);
  std::vector<KeyRow> more;
  if (racks_in(model.collection).size() > 1) more.push_back({"racks", OpenRack{}});
  turning_heading(composer, box, rack_title(*model.map.rack), "", pages, more);
  Legend legend;
  const double gap = composer.mm(cell_gap_mm);
  const double shown = static_cast<double>(std::min(rows.size(), grid.rows));
  const double height =
      std::min(composer.mm(largest_cell_mm), (cells.height - gap * (shown - 1)) / shown);
  for (std::size_t i = pages.first; i < std::min(rows.size(), pages.first + pages.rows); ++i) {
    draw_row(composer, cells.take_top(height), rows[i], grid, model, legend);
    cells.take_top(gap);
  }
  if (telling(model)) {
    composer.fitted(legend_box, telling(model)->sentence, Face::Bold, 3.8, 2.6, 2);
    return;
  }
  draw_legend(composer, legend_box, legend);
}

}  // namespace rackside::kiosk

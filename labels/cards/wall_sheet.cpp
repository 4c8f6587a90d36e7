#include "labels/cards/wall_sheet.hpp"

#include <algorithm>
#include <string_view>

#include "labels/cards/caution_block.hpp"
#include "labels/render/paint.hpp"

namespace rackside {
namespace {

constexpr int columns = 5;
constexpr double margin = 12;          // millimetres; most printers leave 5 white
constexpr double caution_height = 21;  // on any page: letters that are read do not shrink with it
constexpr std::string_view title = "Scan the tub, then the card.";
constexpr std::string_view remark = "Wrong card? Scan \"undo\".";

std::string_view heading_of(Action action) {
  switch (action) {
    case Action::Took:
    case Action::Refused:
    case Action::LeftOvernight:
    case Action::PreyRemoved: return "Food";
    case Action::ShedFound:
    case Action::ShedRemoved:
    case Action::MoultSeen: return "Moult";
    case Action::Misted:
    case Action::WaterFilled:
    case Action::NothingUnusual: return "Care";
    case Action::DarkAbdomen:
    case Action::PlumpAbdomen:
    case Action::Sluggish:
    case Action::SealedIn:
    case Action::Stretched:
    case Action::BrighterColours:
    case Action::ActiveAgain:
    case Action::OnItsBack:
    case Action::ShrivelledAbdomen: return "Signs";
    case Action::Died:
    case Action::Undo: return "More";
  }
  return "";
}

struct Group {
  std::string_view heading;
  std::vector<Action> actions;

  [[nodiscard]] int rows() const {
    return (static_cast<int>(actions.size()) + columns - 1) / columns;
  }
};

std::vector<Group> groups() {
  std::vector<Group> list;
  for (const Action action : all_actions) {
    if (list.empty() || list.back().heading != heading_of(action))
      list.push_back({heading_of(action), {}});
    list.back().actions.push_back(action);
  }
  return list;
}

struct Measures {
  double title_height;
  double heading_height;
  double row_height;
  double column_width;
  SymbolSize symbol;
};

Result<Measures> measures_for(double width, double height, const std::vector<Group>& all,
                              Resolution resolution) {
  const double unit = height / 297;  // everything follows the page
  Measures m{.title_height = 13 * unit, .heading_height = 6 * unit};
  const double headings = m.heading_height * static_cast<double>(all.size());
  int rows = 0;
  for (const Group& group : all) rows += group.rows();
  m.row_height = (height - 2 * margin * unit - m.title_height - headings - caution_height) / rows;
  m.column_width = (width - 2 * margin * unit) / columns;
  // A hand's breadth of white between the symbols, so that a scanner sees one at a time.
  const double room = std::min(m.row_height * 0.74, m.column_width * 0.62);
  const auto symbol = largest_symbol(SymbolVersion::V2, room, resolution);
  constexpr double least_module_of_a_card = 0.4;  // read from arm's length
  if (!symbol || symbol->module < least_module_of_a_card)
    return failure(ErrorKind::BadInput, "The action cards need a page of A5 at least.");
  m.symbol = *symbol;
  return m;
}

PlacedCard card_at(Action action, const Box& box, const Measures& m, Resolution resolution) {
  const double own_side = m.symbol.module * side_of(m.symbol.version);
  return {action, box, m.symbol.module, on_dot(box.x + (box.width - own_side) / 2, resolution),
          on_dot(box.y + quiet_zone * m.symbol.module, resolution)};
}

// "left overnight" below its symbol as "left" and "overnight".
std::vector<std::string_view> lines_of(std::string_view word) {
  const auto blank = word.find(' ');
  if (blank == std::string_view::npos) return {word};
  const auto second = word.substr(blank + 1);
  const auto next = second.find(' ');
  // "on its back": the short words go together.
  if (next != std::string_view::npos)
    return {word.substr(0, blank + 1 + next), second.substr(next + 1)};
  return {word.substr(0, blank), second};
}

// One size for all cards, at which the longest word has room.
double letter_size(const WallSheet& sheet, const PangoText& text) {
  double size = sheet.word_room / 2 / line_ems;
  for (const PlacedCard& card : sheet.cards)
    for (const std::string_view line : lines_of(action_word(card.action)))
      size = std::min(size, card.box.width * 0.94 / text.width(Face::TextBold, line));
  return size;
}

void paint_card(cairo_t* canvas, const PlacedCard& card, double size, const PangoText& text) {
  paint_symbol(canvas, make_symbol(action_code(card.action), SymbolVersion::V2), card.symbol_x,
               card.symbol_y, card.module);
  const std::string_view word = action_word(card.action);
  const double below = card.symbol_y + card.module * side_of(SymbolVersion::V2);
  double y = below + quiet_zone * card.module * 0.5 + baseline_ems * size;
  for (const std::string_view line : lines_of(word)) {
    const double width = size * text.width(Face::TextBold, line);
    text.draw(canvas, Face::TextBold, size, card.box.x + (card.box.width - width) / 2, y, line);
    y += size * line_ems * 0.9;
  }
}

void paint_sheet(cairo_t* canvas, const WallSheet& sheet, const PangoText& text) {
  const double unit = sheet.height / 297;
  const double top = margin * unit + 6 * unit;
  text.draw(canvas, Face::TextBold, 6.5 * unit, margin * unit, top, title);
  const double size = 4 * unit;
  text.draw(canvas, Face::Text, size,
            sheet.width - margin * unit - size * text.width(Face::Text, remark), top, remark);
  for (const PlacedHeading& heading : sheet.headings) {
    cairo_set_line_width(canvas, 0.2);
    cairo_move_to(canvas, heading.x, heading.y + sheet.heading_size * 0.35);
    cairo_line_to(canvas, sheet.width - heading.x, heading.y + sheet.heading_size * 0.35);
    cairo_stroke(canvas);
    text.draw(canvas, Face::Text, sheet.heading_size, heading.x, heading.y, heading.text);
  }
  const double letters = letter_size(sheet, text);
  for (const PlacedCard& card : sheet.cards) paint_card(canvas, card, letters, text);
  paint_cautions(canvas, sheet.cautions, text);
}

}  // namespace

Result<WallSheet> plan_wall_sheet(double width, double height, Resolution resolution) {
  const std::vector<Group> all = groups();
  const auto measures = measures_for(width, height, all, resolution);
  if (!measures) return tl::unexpected(measures.error());
  const Measures& m = *measures;
  const double unit = height / 297;
  WallSheet sheet{.width = width,
                  .height = height,
                  .heading_size = 3.6 * unit,
                  .word_room = m.row_height - m.symbol.side()};
  double top = margin * unit + m.title_height;
  for (const Group& group : all) {
    sheet.headings.push_back(
        {std::string(group.heading), margin * unit, top + m.heading_height * 0.55});
    top += m.heading_height;
    for (std::size_t i = 0; i < group.actions.size(); ++i) {
      const Box box{margin * unit + static_cast<double>(i % columns) * m.column_width,
                    top + static_cast<double>(i / columns) * m.row_height, m.column_width,
                    m.row_height};
      sheet.cards.push_back(card_at(group.actions[i], box, m, resolution));
    }
    top += m.row_height * group.rows();
  }
  sheet.cautions = {margin * unit, top, width - 2 * margin * unit, caution_height};
  return sheet;
}

Pages pages_of(const WallSheet& sheet, const PangoText& text) {
  return {sheet.width, sheet.height, 1,
          [&sheet, &text](cairo_t* canvas, int) { paint_sheet(canvas, sheet, text); }};
}

}  // namespace rackside

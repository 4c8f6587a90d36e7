#include <algorithm>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/round_view.hpp"

namespace rackside::kiosk {
namespace {

void shelf_row(Composer& composer, Box row, const RoundLine& line) {
  row.take_top(row.height * 0.35);
  const Style words = composer.style(Step::Instruction, Face::Bold);
  const double used = composer.text(row, line.title, words);
  row.take_left(used + composer.mm(3));
  composer.text(row, line.detail, composer.style(Step::Record), Ink::Soft);
}

void tub_row(Composer& composer, Box row, const RoundLine& line) {
  const Ink ink = line.done || line.quiet ? Ink::Soft : Ink::Text;
  if (line.code) composer.touch(row, line.code->grouped(), OpenTub{*line.code});
  composer.rule(row);
  row.take_top(composer.mm(0.6));
  const Style position = composer.style(Step::Species, Face::Code);
  const double wide =
      std::max(composer.mm(14), composer.width(line.position, position) + composer.mm(2));
  composer.text(row.take_left(std::min(wide, row.width * 0.3)), line.position, position,
                line.done || line.quiet ? Ink::Soft : Ink::Accent);
  Box right = row.take_right(composer.mm(26));
  if (line.strip) small_moult_strip(composer, right.take_bottom(right.height * 0.5), *line.strip);
  if (line.code)
    composer.text(right, line.code->grouped(), composer.style(Step::Caption, Face::Code), Ink::Soft,
                  Align::Right);
  row.take_right(composer.mm(gap_mm));
  Box upper = row.take_top(row.height * 0.5);
  const double width =
      composer.text(upper, line.title, composer.style(Step::Instruction, Face::Italic), ink);
  if (line.done)
    composer.fill({upper.x, upper.middle().y, width, std::max(1.5, composer.mm(0.4))}, Ink::Text);
  if (line.urgent) {
    const double side = row.height * 0.8;
    composer.mark(Mark::Sign, {row.x, row.y, side, side});
    row.take_left(side + composer.mm(1));
  }
  composer.text(row, line.detail, composer.style(Step::Record), ink);
}

void rows(Composer& composer, Box box, const std::vector<RoundLine>& lines, const Pages& pages) {
  for (std::size_t i = pages.first; i < std::min(lines.size(), pages.first + pages.rows); ++i) {
    const Box row = box.take_top(tub_row_height(composer));
    if (lines[i].kind == RoundLine::Kind::Shelf)
      shelf_row(composer, row, lines[i]);
    else
      tub_row(composer, row, lines[i]);
  }
}

// Until somebody turns the pages by hand, the list follows the walk.
Pages round_pages(const Composer& composer, const Box& box, const RoundView& view,
                  const Model& model) {
  const std::size_t fit = rows_in(box, tub_row_height(composer));
  const int here = static_cast<int>(view.next / fit);
  const bool follow = view.under_way && !model.list_turned;
  return pages_of(view.lines, fit, follow ? here : model.list_page);
}

std::vector<KeyRow> keys_for(const RoundView& view, const Model& model) {
  std::vector<KeyRow> keys;
  if (model.overview_known && model.collection.enclosures.empty())
    return {{"first tub", Show{ScreenName::NewTubs}, Weight::First},
            {"bring in", Show{ScreenName::BringIn}},
            {"setup", Show{ScreenName::Setup}}};
  if (view.under_way) keys.push_back({"end the round", EndRound{}});
  if (view.can_set_out) keys.push_back({"set out", Show{ScreenName::Carry}, Weight::First});
  if (model.summary && !view.under_way) keys.push_back({"last round", Show{ScreenName::Summary}});
  keys.push_back({"find", Show{ScreenName::Find}});
  keys.push_back({"drawer", Show{ScreenName::Drawer}});
  return keys;
}

}  // namespace

void compose_round(Composer& composer, const Model& model) {
  const RoundView view = view_round(model);
  Box box = page(composer);
  Box top = box.take_top(composer.line_height(composer.style(Step::Species)) + composer.mm(2));
  const double used = composer.text(top, view.title, composer.style(Step::Species, Face::Bold));
  top.take_left(used + composer.mm(4));
  composer.text(top, view.detail, composer.style(Step::Record), Ink::Soft, Align::Right);
  key_row(composer, box, keys_for(view, model));
  notice_line(composer, box, telling(model));
  if (model.overview_known && model.collection.enclosures.empty()) {
    composer.fitted(
        box, "No tubs yet. Begin with the first one here, or bring your records in from a file.",
        Face::Bold, 5, 3.8, 4);
    return;
  }
  for (const std::string& note : view.notes)
    if (box.height > 4 * tub_row_height(composer))
      composer.paragraph(box, note, composer.style(Step::Record, Face::Bold), 2);
  Pages pages = round_pages(composer, box, view, model);
  page_keys(composer, box, pages);
  const auto lines = round_lines(model, pages.first, pages.rows);
  pages.first = 0;
  rows(composer, box, lines, pages);
}

void compose_summary(Composer& composer, const Model& model) {
  const SummaryView view = view_summary(model);
  Box box = page(composer);
  heading(composer, box, "The round is over");
  composer.paragraph(box, view.words, composer.style(Step::Instruction, Face::Bold), 3);
  box.take_top(composer.mm(2));
  if (view.lines.empty()) {
    composer.text(box.take_top(composer.mm(8)), "Nothing needs another look.",
                  composer.style(Step::Record), Ink::Soft);
    return;
  }
  composer.text(box.take_top(composer.mm(7)), "Needs another look:", composer.style(Step::Record),
                Ink::Soft);
  const Pages pages =
      pages_of(view.lines.size(), rows_in(box, tub_row_height(composer)), model.list_page);
  page_keys(composer, box, pages);
  rows(composer, box, view.lines, pages);
}

}  // namespace rackside::kiosk

#include <fmt/format.h>

#include <cmath>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/date_words.hpp"

namespace rackside::kiosk {
namespace {

std::size_t rows_in(const Box& box, double row) {
  return static_cast<std::size_t>(std::max(1.0, std::floor(box.height / row)));
}

std::string counted(std::size_t count, std::string_view one, std::string_view many) {
  return fmt::format("{} {}", count, count == 1 ? one : many);
}

void list(Composer& composer, Box box, const std::vector<TubLine>& lines, int page_wanted) {
  const Pages pages = pages_of(lines.size(), rows_in(box, tub_row_height(composer)), page_wanted);
  page_keys(composer, box, pages);
  tub_rows(composer, box, lines, pages);
}

}  // namespace

void compose_round(Composer& composer, const Model& model) {
  Box box = page(composer);
  Box top = box.take_top(composer.mm(least_target_mm));
  const Style title = composer.style(Step::Species, Face::Bold);
  const double used = composer.text(top, long_day_words(model.now.day()), title);
  top.take_left(used + composer.mm(4));
  const auto tubs = walking_order(model.collection);
  composer.text(top,
                model.roster_known ? counted(tubs.size(), "tub", "tubs") : "reading the collection",
                composer.style(Step::Record), Ink::Soft, Align::Right);
  key_row(composer, box, {{"type a code", Show{ScreenName::Keypad}}, {"find", Show{ScreenName::Find}}});
  notice_line(composer, box, model.notice);
  std::vector<TubLine> lines;
  const Pages pages = pages_of(tubs.size(), rows_in(box, tub_row_height(composer)), model.list_page);
  page_keys(composer, box, pages);
  // Only what is on the page is worked out: two thousand instructions are for the worker.
  for (std::size_t i = pages.first; i < std::min(tubs.size(), pages.first + pages.rows); ++i)
    lines.push_back(tub_line(model, *tubs[i]));
  if (lines.empty() && model.roster_known) {
    composer.fitted(box, "No tubs yet. Import your records with rackside-log, or make a batch of labels.",
                    Face::Bold, 5, 3.8, 4);
    return;
  }
  tub_rows(composer, box, lines, {.rows = pages.rows});
}

void compose_find(Composer& composer, const Model& model) {
  Box box = page(composer);
  heading(composer, box, "find", "code, species, name or place");
  const bool portrait = composer.panel().portrait();
  Box keys = box.take_bottom(std::min(composer.mm(4 * 15 + 4 * gap_mm), box.height * (portrait ? 0.4 : 0.62)));
  Box entry = box.take_top(composer.line_height(composer.style(Step::Species)) + composer.mm(2));
  composer.text(entry, model.find_words.empty() ? "…" : model.find_words,
                composer.style(Step::Species, Face::Bold));
  composer.rule({entry.x, entry.bottom() - 2, entry.width, 2}, Ink::Accent);
  notice_line(composer, box, model.notice);
  if (!model.find_words.empty()) {
    const auto lines = view_found(model);
    if (lines.empty())
      composer.text(box, "Nothing here has all these words.", composer.style(Step::Record), Ink::Soft);
    else
      list(composer, box, lines, model.list_page);
  }
  const double gap = composer.mm(gap_mm);
  const double height = (keys.height - 3 * gap) / 4;
  const std::vector<std::string> rows{"1234567890", "qwertyuiop", "asdfghjkl", "zxcvbnm"};
  for (std::size_t r = 0; r < rows.size(); ++r) {
    Box row = keys.take_top(height);
    keys.take_top(gap);
    const double extra = r == 2 ? 1 : r == 3 ? 3 : 0;
    const double width = (row.width - gap * 9) / 10;
    for (const char c : rows[r]) {
      composer.key(row.take_left(width), std::string(1, c), Typed{std::string(1, c)});
      row.take_left(gap);
    }
    if (extra == 1) composer.key(row.take_left(width), "-", Typed{"-"});
    if (extra == 3) {
      composer.key(row.take_left(width), "␣", Typed{" "});
      row.take_left(gap);
      composer.key(row, "erase", Erase{});
    }
  }
}

void compose_records(Composer& composer, const Model& model) {
  Box box = page(composer);
  const auto animal = shown_animal(model);
  const auto lines = view_records(model);
  heading(composer, box, animal ? display_name(*animal) : "records",
          counted(lines.size(), "entry", "entries"));
  notice_line(composer, box, model.notice);
  const double height = composer.mm(least_target_mm);
  const Pages pages = pages_of(lines.size(), rows_in(box, height), model.list_page);
  page_keys(composer, box, pages);
  for (std::size_t i = pages.first; i < std::min(lines.size(), pages.first + pages.rows); ++i) {
    Box row = box.take_top(height);
    composer.rule(row);
    row.take_top(composer.mm(1));
    row.take_bottom(composer.mm(1));
    Box key = row.take_right(composer.mm(30));
    row.take_right(composer.mm(gap_mm));
    if (lines[i].can_take_back) composer.key(key, "take back", TakeBack{lines[i].event});
    if (lines[i].taken_back)
      composer.text(key, "taken back", composer.style(Step::Record), Ink::Soft, Align::Middle);
    record_line(composer, row, lines[i]);
  }
}

}  // namespace rackside::kiosk

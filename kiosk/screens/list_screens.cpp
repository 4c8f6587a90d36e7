#include <fmt/format.h>

#include <cmath>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/date_words.hpp"

namespace rackside::kiosk {
namespace {

std::string counted(std::size_t count, std::string_view one, std::string_view many) {
  return fmt::format("{} {}", count, count == 1 ? one : many);
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

void compose_records(Composer& composer, const Model& model) {
  Box box = page(composer);
  const auto animal = shown_animal(model);
  const auto lines = view_records(model);
  heading(composer, box, animal ? display_name(*animal) : "records",
          counted(lines.size(), "entry", "entries"));
  notice_line(composer, box, model.notice);
  const double height = composer.mm(least_target_mm + gap_mm);
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

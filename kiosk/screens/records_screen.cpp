#include <fmt/format.h>

#include <cmath>

#include "core/words/dates.hpp"
#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/record_filter.hpp"

namespace rackside::kiosk {
namespace {

std::string counted(std::size_t count, std::string_view one, std::string_view many) {
  return fmt::format("{} {}", count, count == 1 ? one : many);
}

}  // namespace

void compose_records(Composer& composer, const Model& model) {
  Box box = page(composer);
  const RecordFilter filter = model.tub ? model.tub->filter : RecordFilter::All;
  const auto animal = shown_animal(model);
  const auto lines = view_records(model, filter);
  Box top = box.take_top(composer.mm(least_target_mm));
  box.take_top(composer.mm(gap_mm));
  composer.key(top.take_left(composer.mm(24)), "back", Close{});
  top.take_left(composer.mm(4));
  composer.key(top.take_right(composer.mm(36)), fmt::format("show: {}", filter_word(filter)),
               NextFilter{}, filter == RecordFilter::All ? Weight::Plain : Weight::First);
  top.take_right(composer.mm(gap_mm));
  Box upper = top.take_top(top.height * 0.55);
  composer.fitted(upper, animal ? display_name(*animal) : "records", Face::Italic, 4.6, 2.8, 1);
  composer.text(top, counted(lines.size(), "entry", "entries"), composer.style(Step::Record),
                Ink::Soft);
  notice_line(composer, box, telling(model));
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
    if (lines[i].can_take_back) composer.key(key, "put right", LookAt{lines[i].event});
    if (lines[i].taken_back)
      composer.text(key, "taken back", composer.style(Step::Record), Ink::Soft, Align::Middle);
    record_line(composer, row, lines[i]);
  }
}

}  // namespace rackside::kiosk

// Records from CSV files.

#include <algorithm>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/bring_in_view.hpp"

namespace rackside::kiosk {
namespace {

void file_row(Composer& composer, Box row, const FileLine& file) {
  composer.touch(row, file.name, file.intent);
  composer.rule(row);
  const Style small = composer.style(Step::Record);
  const double detail = std::min(row.width * 0.5, composer.width(file.folder, small) + 1);
  composer.text(row.take_right(detail), file.folder, small, Ink::Soft, Align::Right);
  row.take_right(composer.mm(gap_mm));
  composer.text(row, file.name, composer.style(Step::Species, Face::Code), Ink::Accent);
}

}  // namespace

void compose_bring_in(Composer& composer, const Model& model) {
  const BringInView view = view_bring_in(model);
  Box box = page(composer);
  heading(composer, box, "Bring in records");
  if (view.key) key_row(composer, box, {{*view.key, *view.intent, Weight::First}});
  notice_line(composer, box, telling(model));
  composer.paragraph(box, view.words, composer.style(Step::Instruction, Face::Bold), 4);
  box.take_top(composer.mm(2));
  const double height = composer.mm(least_target_mm);
  const Pages pages = pages_of(view.files.size(), rows_in(box, height), model.list_page);
  page_keys(composer, box, pages);
  for (std::size_t i = pages.first; i < std::min(view.files.size(), pages.first + pages.rows); ++i)
    file_row(composer, box.take_top(height), view.files[i]);
}

}  // namespace rackside::kiosk

// Records from CSV files.

#include <algorithm>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/bring_in_view.hpp"

namespace rackside::kiosk {

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
    named_row(
        composer, box.take_top(height),
        {view.files[i].name, view.files[i].folder, view.files[i].intent, Face::Code, Ink::Accent});
}

}  // namespace rackside::kiosk

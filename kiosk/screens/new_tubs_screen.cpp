// New tubs: one by hand, or a whole batch of slings.

#include <algorithm>
#include <array>

#include "kiosk/model/steps.hpp"
#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"

namespace rackside::kiosk {
namespace {

// In the order in which one thinks of them.
constexpr std::array fields{NewTubField::Species,  NewTubField::Count,     NewTubField::Stage,
                            NewTubField::Sex,      NewTubField::Rack,      NewTubField::Shelf,
                            NewTubField::Position, NewTubField::PerShelf,  NewTubField::Instar,
                            NewTubField::Source,   NewTubField::CommonName};

bool few_values(NewTubField field) {
  return field == NewTubField::Stage || field == NewTubField::Sex;
}

Intent on_touch(NewTubField field) {
  if (few_values(field)) return NextValue{field};
  return Ask{AskNewTub{field}};
}

std::string shown_value(const BatchRequest& form, NewTubField field) {
  std::string value = new_tub_value(form, field);
  if (!value.empty()) return value;
  return field == NewTubField::Count ? "1" : "-";
}

void field_slip(Composer& composer, Box box, const BatchRequest& form, NewTubField field) {
  composer.fill(box, Ink::Slip);
  composer.rule({box.x, box.bottom() - composer.mm(0.5), box.width, composer.mm(0.5)}, Ink::Accent);
  composer.touch(box, new_tub_words(field), on_touch(field));
  Box inner = box.inset(composer.mm(1.4));
  const Style caption = composer.style(Step::Caption);
  composer.text(inner.take_top(composer.line_height(caption)), new_tub_words(field), caption,
                Ink::Soft, Align::Left, Ink::Slip);
  const bool name = field == NewTubField::Species;
  composer.text(inner, shown_value(form, field),
                composer.style(Step::Instruction, name ? Face::Italic : Face::Bold), Ink::Text,
                Align::Left, Ink::Slip);
}

}  // namespace

void compose_new_tubs(Composer& composer, const Model& model) {
  Box box = page(composer);
  Box top = box.take_top(composer.mm(least_target_mm));
  box.take_top(composer.mm(gap_mm));
  composer.key(top.take_left(composer.mm(24)), "back", Close{});
  composer.key(top.take_right(composer.mm(44)), "write and print", MakeTubs{}, Weight::First);
  top.take_left(composer.mm(4));
  composer.text(top, "New tubs", composer.style(Step::Species, Face::Bold));
  notice_line(composer, box, telling(model));
  const double gap = composer.mm(gap_mm);
  const double row = composer.mm(least_target_mm) + gap;
  const std::size_t columns = box.width > composer.mm(180) ? 3 : 2;
  // The species has the first row to itself: names are long.
  const std::size_t slots = fields.size() + columns - 1;
  const Pages pages = pages_of(slots, rows_in(box, row) * columns, model.list_page);
  page_keys(composer, box, pages);
  const double width =
      (box.width - gap * static_cast<double>(columns - 1)) / static_cast<double>(columns);
  for (std::size_t i = 0; i < fields.size(); ++i) {
    const std::size_t slot = i == 0 ? 0 : i + columns - 1;
    if (slot < pages.first || slot >= pages.first + pages.rows) continue;
    const std::size_t at = slot - pages.first;
    const Box slip{box.x + static_cast<double>(at % columns) * (width + gap),
                   box.y + static_cast<double>(at / columns) * row, i == 0 ? box.width : width,
                   composer.mm(least_target_mm)};
    field_slip(composer, slip, model.new_tubs, fields[i]);
  }
}

}  // namespace rackside::kiosk

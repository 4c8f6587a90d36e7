#include "kiosk/screens/form_part.hpp"

#include <algorithm>

namespace rackside::kiosk {
namespace {

void field_slip(Composer& composer, const Box& box, const FormField& field) {
  composer.fill(box, Ink::Slip);
  composer.rule({box.x, box.bottom() - composer.mm(0.5), box.width, composer.mm(0.5)},
                field.chosen ? Ink::Text : Ink::Accent);
  composer.touch(box, field.word, field.intent);
  Box inner = box.inset(composer.mm(1.4));
  const Style caption = composer.style(Step::Caption);
  composer.text(inner.take_top(composer.line_height(caption)), field.word, caption, Ink::Soft,
                Align::Left, Ink::Slip);
  const Face face = field.scientific ? Face::Italic : Face::Bold;
  composer.text(inner, field.value, composer.style(Step::Instruction, face), Ink::Text, Align::Left,
                Ink::Slip);
}

// Where each field stands in a grid that is filled row by row, and how many places that takes.
struct Places {
  std::vector<std::size_t> of;
  std::size_t all = 0;
};

Places places_of(const std::vector<FormField>& fields, std::size_t columns) {
  Places places;
  for (const FormField& field : fields) {
    if (field.long_words) places.all = (places.all + columns - 1) / columns * columns;
    places.of.push_back(places.all);
    places.all += field.long_words ? columns : 1;
  }
  return places;
}

void slips(Composer& composer, Box box, const std::vector<FormField>& fields, int wanted) {
  const double gap = composer.mm(gap_mm);
  const double row = composer.mm(least_target_mm) + gap;
  const std::size_t columns = box.width > composer.mm(180) ? 3 : 2;
  const Places places = places_of(fields, columns);
  const Pages pages = pages_of(places.all, rows_in(box, row) * columns, wanted);
  page_keys(composer, box, pages);
  const double width =
      (box.width - gap * static_cast<double>(columns - 1)) / static_cast<double>(columns);
  for (std::size_t i = 0; i < fields.size(); ++i) {
    if (places.of[i] < pages.first || places.of[i] >= pages.first + pages.rows) continue;
    const std::size_t at = places.of[i] - pages.first;
    field_slip(composer,
               {box.x + static_cast<double>(at % columns) * (width + gap),
                box.y + static_cast<double>(at / columns) * row,
                fields[i].long_words ? box.width : width, composer.mm(least_target_mm)},
               fields[i]);
  }
}

}  // namespace

void form_page(Composer& composer, const Model& model, const Form& form) {
  Box box = page(composer);
  Box top = box.take_top(composer.mm(least_target_mm));
  box.take_top(composer.mm(gap_mm));
  composer.key(top.take_left(composer.mm(24)), "back", Close{});
  composer.key(top.take_right(composer.mm(44)), form.done.word, form.done.intent, Weight::First);
  top.take_left(composer.mm(4));
  composer.text(top, form.title, composer.style(Step::Species, Face::Bold));
  notice_line(composer, box, telling(model));
  slips(composer, box, form.fields, model.list_page);
}

}  // namespace rackside::kiosk

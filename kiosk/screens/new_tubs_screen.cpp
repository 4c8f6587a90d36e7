// New tubs: one by hand, or a whole batch of slings.

#include <array>

#include "kiosk/model/steps.hpp"
#include "kiosk/screens/form_part.hpp"
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

FormField slip_of(const BatchRequest& form, NewTubField field) {
  const bool species = field == NewTubField::Species;
  return {.word = new_tub_words(field),
          .value = shown_value(form, field),
          .intent = on_touch(field),
          .long_words = species,
          .scientific = species};
}

}  // namespace

void compose_new_tubs(Composer& composer, const Model& model) {
  Form form{.title = "New tubs", .done = {"write and print", MakeTubs{}}, .fields = {}};
  for (const NewTubField field : fields) form.fields.push_back(slip_of(model.new_tubs, field));
  form_page(composer, model, form);
}

}  // namespace rackside::kiosk

#pragma once
// A form: slips to touch, a value each, and the key that is touched when all is said.

#include "kiosk/screens/parts.hpp"
#include "kiosk/view/form_field.hpp"

namespace rackside::kiosk {

struct Form {
  std::string title;
  KeyRow done;
  std::vector<FormField> fields;
};

/// The whole page, with what is to be told at its foot.
void form_page(Composer& composer, const Model& model, const Form& form);

}  // namespace rackside::kiosk

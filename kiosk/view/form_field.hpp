#pragma once
// One value of a form.

#include <string>

#include "kiosk/model/intent.hpp"

namespace rackside::kiosk {

/// What it is, what has been said, and what touching it does.
struct FormField {
  std::string word;
  std::string value;
  Intent intent;
  bool chosen = false;      // of those that are only in or out
  bool long_words = false;  // has a row to itself
  bool scientific = false;  // a species, in italics
  bool operator==(const FormField&) const = default;
};

}  // namespace rackside::kiosk

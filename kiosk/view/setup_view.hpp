#pragma once
// What the setup screen says: one row a setting, with the choices as keys.

#include <string>
#include <vector>

#include "kiosk/model/model.hpp"

namespace rackside::kiosk {

struct SetupChoice {
  std::string word;
  Intent intent;
  bool chosen = false;
  bool operator==(const SetupChoice&) const = default;
};
struct SetupRow {
  std::string title;
  std::string detail;  // what is chosen means, in a line
  std::vector<SetupChoice> choices;
  bool operator==(const SetupRow&) const = default;
};

[[nodiscard]] std::vector<SetupRow> view_setup(const Model& model, double pixels_per_mm);

}  // namespace rackside::kiosk

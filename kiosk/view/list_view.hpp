#pragma once
// Lists of tubs: one line a tub.

#include <string>
#include <vector>

#include "kiosk/model/model.hpp"

namespace rackside::kiosk {

struct TubLine {
  Code code;
  std::string position;
  std::string shelf;  // "rack A, shelf 2": told where it changes
  std::string species;
  std::string state;
  std::string task;
  bool leave_alone = false;
  bool urgent = false;
  bool operator==(const TubLine&) const = default;
};

[[nodiscard]] TubLine tub_line(const Model& model, const EnclosureState& enclosure);

}  // namespace rackside::kiosk

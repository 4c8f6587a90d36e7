#pragma once
// What a label is to say, before anybody asks how much room there is.

#include <optional>
#include <string>

#include "core/code/code.hpp"
#include "core/values/time.hpp"

namespace rackside {

/// What whoever opens the tub should know first.
enum class Hazard { None, Venom, Hairs, VenomAndHairs };

struct LabelContent {
  Code code;
  std::string species;
  std::string common_name;
  std::string source;  // the sac it came out of, or who it came from
  std::optional<int> instar;
  std::optional<Day> date;
  Hazard hazard = Hazard::None;

  bool operator==(const LabelContent&) const = default;
};

}  // namespace rackside

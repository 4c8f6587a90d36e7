#pragma once
// What the kiosk can ask a number for.

#include <optional>
#include <string>

#include "core/code/code.hpp"
#include "core/values/uuid.hpp"

namespace rackside::kiosk {

enum class NumberOf { LegSpan, Carapace, Temperature, Humidity };

struct NumberQuestion {
  NumberOf what = NumberOf::LegSpan;
  std::optional<AnimalId> animal;  // of a measure ...
  std::optional<Code> tub;         // ... and where it lives
  std::string rack;                // of a reading; empty is the room
  bool operator==(const NumberQuestion&) const = default;
};

}  // namespace rackside::kiosk

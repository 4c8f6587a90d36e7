#pragma once
// What the kiosk can ask for in words. The screen with the keyboard is the same for all of them;
// what becomes of the answer is told apart here.

#include <variant>

namespace rackside::kiosk {

/// The parts of the form for new tubs.
enum class NewTubField {
  Species,
  CommonName,
  Count,
  Stage,
  Sex,
  Instar,
  Source,
  Rack,
  Shelf,
  Position,
  PerShelf,
};

struct AskNewTub {
  NewTubField field = NewTubField::Species;
  bool operator==(const AskNewTub&) const = default;
};

using Question = std::variant<AskNewTub>;

}  // namespace rackside::kiosk

#pragma once
// What the kiosk can ask for in words. The screen with the keyboard is the same for all of them;
// what becomes of the answer is told apart here.

#include <optional>
#include <string>
#include <variant>

#include "core/code/code.hpp"
#include "core/event/details.hpp"
#include "core/values/units.hpp"

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

/// The name of somebody new.
struct AskPerson {
  Role role = Role::Assistant;
  bool operator==(const AskPerson&) const = default;
};

/// What is wrong at a tub, for the keeper. Half an answer about one tub is none about another.
struct AskWrong {
  std::optional<Code> tub;  // none: there is nothing to say it of
  bool operator==(const AskWrong&) const = default;
};

/// What there is in the place of this prey, for this round.
struct AskPrey {
  std::string kind;
  std::optional<Millimetres> size;  // none: not known
  bool operator==(const AskPrey&) const = default;
};

/// Who stands in, of the cover that is being planned.
struct AskStandIn {
  bool operator==(const AskStandIn&) const = default;
};

/// The name of the keeper whom they can call.
struct AskContact {
  bool operator==(const AskContact&) const = default;
};
/// The number of that keeper.
struct AskContactNumber {
  std::string name;
  bool operator==(const AskContactNumber&) const = default;
};
/// What they are to know about everything.
struct AskCoverNote {
  bool operator==(const AskCoverNote&) const = default;
};

using Question = std::variant<AskNewTub, AskPerson, AskWrong, AskPrey, AskStandIn, AskContact,
                              AskContactNumber, AskCoverNote>;

}  // namespace rackside::kiosk

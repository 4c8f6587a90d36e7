#pragma once
// Everything that can be recorded with one tap or one card. The tiles of the tub screen and the
// cards of the wall sheet both stand on this table, so that neither can do what the other cannot.

#include <array>
#include <optional>
#include <string_view>

#include "core/code/code.hpp"
#include "core/event/details.hpp"

namespace rackside {

enum class Action {
  Took,
  Refused,
  LeftOvernight,
  PreyRemoved,
  ShedFound,
  ShedRemoved,
  MoultSeen,
  Misted,
  WaterFilled,
  NothingUnusual,
  DarkAbdomen,
  PlumpAbdomen,
  Sluggish,
  SealedIn,
  Stretched,
  BrighterColours,
  ActiveAgain,
  OnItsBack,
  ShrivelledAbdomen,
  Died,
  Undo,
};

/// In the order of the wall sheet: food, shed and moult, care, signs, the rest.
inline constexpr std::array all_actions{
    Action::Took,        Action::Refused,        Action::LeftOvernight,     Action::PreyRemoved,
    Action::ShedFound,   Action::ShedRemoved,    Action::MoultSeen,         Action::Misted,
    Action::WaterFilled, Action::NothingUnusual, Action::DarkAbdomen,       Action::PlumpAbdomen,
    Action::Sluggish,    Action::SealedIn,       Action::Stretched,         Action::BrighterColours,
    Action::ActiveAgain, Action::OnItsBack,      Action::ShrivelledAbdomen, Action::Died,
    Action::Undo,
};

/// What stands on the tile and on the card: "left overnight", "moulting now".
[[nodiscard]] std::string_view action_word(Action action);

/// The code of its card, the same on every wall for good: printed cards outlive programs.
[[nodiscard]] Code action_code(Action action);

/// None for codes of another kind and for action codes of a later program.
[[nodiscard]] std::optional<Action> action_from_code(const Code& code);

/// What is recorded. None for undo, which takes back what was recorded last.
[[nodiscard]] std::optional<Details> details_of(Action action);

}  // namespace rackside

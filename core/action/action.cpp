#include "core/action/action.hpp"

namespace rackside {
namespace {

struct Row {
  Action action;
  std::string_view word;
  std::string_view body;  // never change one, never give one to another action
};

// The bodies were drawn at random so that any two differ in at least five of their six places: a
// damaged or mistyped card cannot come out as another one.
constexpr std::array<Row, all_actions.size()> rows{{
    {Action::Took, "took", "M8TCWR"},
    {Action::Refused, "refused", "FV7N15"},
    {Action::LeftOvernight, "left overnight", "J3K70T"},
    {Action::PreyRemoved, "prey removed", "D5VW24"},
    {Action::ShedFound, "shed found", "MMF440"},
    {Action::ShedRemoved, "shed removed", "Y59A6J"},
    {Action::MoultSeen, "moulting now", "PN65R6"},
    {Action::Misted, "misted", "D90CE5"},
    {Action::WaterFilled, "water filled", "A29CX9"},
    {Action::NothingUnusual, "nothing unusual", "GRA5GG"},
    {Action::DarkAbdomen, "dark abdomen", "ECDKX0"},
    {Action::PlumpAbdomen, "plump abdomen", "HCH8VF"},
    {Action::Sluggish, "sluggish", "Y91E26"},
    {Action::SealedIn, "sealed in", "T12MJD"},
    {Action::Stretched, "stretched", "N1WGAX"},
    {Action::BrighterColours, "brighter colours", "FMY5HF"},
    {Action::ActiveAgain, "active again", "XJ5NGY"},
    {Action::OnItsBack, "on its back", "A52G8H"},
    {Action::ShrivelledAbdomen, "shrivelled abdomen", "793TDG"},
    {Action::Died, "died", "WWVCRK"},
    {Action::Undo, "undo", "P1V9CJ"},
}};

constexpr bool rows_follow_the_enumeration() {
  for (std::size_t i = 0; i < rows.size(); ++i)
    if (rows[i].action != all_actions[i] || static_cast<std::size_t>(rows[i].action) != i)
      return false;
  return true;
}
static_assert(rows_follow_the_enumeration());

const Row& row_of(Action action) { return rows[static_cast<std::size_t>(action)]; }

}  // namespace

std::string_view action_word(Action action) { return row_of(action).word; }

Code action_code(Action action) { return make_code(CodeKind::Action, row_of(action).body).value(); }

std::optional<Action> action_from_code(const Code& code) {
  if (code.kind() != CodeKind::Action) return std::nullopt;
  for (const Row& row : rows)
    if (row.body == code.body()) return row.action;
  return std::nullopt;
}

std::optional<Details> details_of(Action action) {
  switch (action) {
    case Action::Took: return Offered{.outcome = Outcome::Took};
    case Action::Refused: return Offered{.outcome = Outcome::Refused};
    case Action::LeftOvernight: return Offered{.outcome = Outcome::LeftOvernight};
    case Action::PreyRemoved: return PreyRemoved{};
    case Action::ShedFound: return ShedFound{};
    case Action::ShedRemoved: return ShedRemoved{};
    case Action::MoultSeen: return Moulted{};
    case Action::Misted: return Misted{};
    case Action::WaterFilled: return WaterFilled{};
    case Action::NothingUnusual: return Looked{};
    case Action::DarkAbdomen: return Looked{{Sign::DarkAbdomen}};
    case Action::PlumpAbdomen: return Looked{{Sign::PlumpAbdomen}};
    case Action::Sluggish: return Looked{{Sign::Sluggish}};
    case Action::SealedIn: return Looked{{Sign::SealedIn}};
    case Action::Stretched: return Looked{{Sign::Stretched}};
    case Action::BrighterColours: return Looked{{Sign::BrighterColours}};
    case Action::ActiveAgain: return Looked{{Sign::ActiveAgain}};
    case Action::OnItsBack: return Looked{{Sign::OnItsBack}};
    case Action::ShrivelledAbdomen: return Looked{{Sign::ShrivelledAbdomen}};
    case Action::Died: return Died{};
    case Action::Undo: return std::nullopt;
  }
  return std::nullopt;
}

}  // namespace rackside

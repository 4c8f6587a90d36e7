#pragma once
// Who may do what at the kiosk: one table. Before anybody is known to work here, everything is open
// to everybody, as for a keeper who lives alone with the animals.

#include <array>
#include <string>

#include "kiosk/model/intent.hpp"
#include "kiosk/model/model.hpp"

namespace rackside::kiosk {

/// Who is at the kiosk, as far as the table cares.
enum class Standing {
  Unset,      // nobody works here yet
  Nobody,     // people do, but who is here is not known
  Assistant,  //
  Keeper,     // said to be one, by badge or from the list
  Proven,     // has given the PIN since
};
inline constexpr std::array all_standings{Standing::Unset, Standing::Nobody, Standing::Assistant,
                                          Standing::Keeper, Standing::Proven};

/// How well a thing is guarded.
enum class Guard {
  Open,       // looking, moving about, what workers bring
  Entry,      // what is written bears a name
  Keepers,    // new tubs
  KeeperPin,  // setup, other people's entries, deaths, people
  WayOut,     // leaving the program
};
inline constexpr std::array all_guards{Guard::Open, Guard::Entry, Guard::Keepers, Guard::KeeperPin,
                                       Guard::WayOut};

enum class Verdict { Allowed, AskWho, AskPin, Refused };

struct PermissionRow {
  Guard guard;
  std::array<Verdict, all_standings.size()> verdicts;  // in the order of all_standings
};

inline constexpr std::array<PermissionRow, all_guards.size()> permissions{{
    {Guard::Open,
     {Verdict::Allowed, Verdict::Allowed, Verdict::Allowed, Verdict::Allowed, Verdict::Allowed}},
    {Guard::Entry,
     {Verdict::Allowed, Verdict::AskWho, Verdict::Allowed, Verdict::Allowed, Verdict::Allowed}},
    {Guard::Keepers,
     {Verdict::Allowed, Verdict::AskWho, Verdict::Refused, Verdict::Allowed, Verdict::Allowed}},
    {Guard::KeeperPin,
     {Verdict::Allowed, Verdict::AskWho, Verdict::Refused, Verdict::AskPin, Verdict::Allowed}},
    {Guard::WayOut,
     {Verdict::Allowed, Verdict::AskPin, Verdict::AskPin, Verdict::AskPin, Verdict::Allowed}},
}};

/// Whether this person has access today: an assistant who stands in, on the days of their cover
/// only, which can also end at midnight while they are at the kiosk.
[[nodiscard]] bool is_their_day(const Model& model, const Person& person);
[[nodiscard]] Standing standing_of(const Model& model);
/// Somebody who is not a keeper is at the kiosk: what they see is simpler.
[[nodiscard]] bool stands_in(const Model& model);
/// What guards this intent, as things stand: one's own entry is less guarded than somebody else's.
[[nodiscard]] Guard guard_of(const Model& model, const Intent& intent);
[[nodiscard]] Verdict permission(const Model& model, const Intent& intent);

/// Why not, where the verdict is Refused.
[[nodiscard]] std::string refusal(const Model& model, const Intent& intent);

/// How long a PIN that was given lasts while its keeper goes on working; a pause of `idle_return`
/// ends it sooner.
inline constexpr std::chrono::minutes pin_lasts{15};
/// A pause after which whoever was at the kiosk is no longer taken to be there.
inline constexpr std::chrono::minutes presence_lasts{20};

/// Screens that ask something before what was wanted goes on.
[[nodiscard]] constexpr bool asks_first(ScreenName screen) {
  return screen == ScreenName::Who || screen == ScreenName::Pin;
}

}  // namespace rackside::kiosk

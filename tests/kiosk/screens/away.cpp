// The screens about somebody who stands in, with much to say.

#include "tests/kiosk/screens/collections.hpp"

#include "core/cover/days.hpp"
#include "core/people/people.hpp"
#include "kiosk/model/update.hpp"
#include "tests/generators/events.hpp"

namespace rackside::tests {
namespace {

using kiosk::Model;
using kiosk::ScreenName;
using std::chrono::days;

constexpr const char* keeper = "Maximiliane von der Heyden-Osterwald";
constexpr const char* stand_in = "Wolfgang Amadeus Featherstonehaugh";
constexpr const char* longest = "Pseudohapalopus cf. spinulopalpus var. longissima";

TubRemark moult_of(int number) {
  return {animal_number(number),
          tub_number(number),
          {"Kellerregal links", "12", std::to_string(90 + number)},
          longest,
          "May be found on its back between Wednesday 12 and Wednesday 26 February: leave it, "
          "nothing is wrong (4 of 10 likely)."};
}

kiosk::CoverBrief much_to_get(Day from) {
  kiosk::CoverBrief brief;
  brief.supplies = {.from = from, .to = from + days{20}, .tubs = 1840, .without_water = 312};
  brief.supplies.prey = {{"cricket", Millimetres{8}, 1240, 210.4, 1074},
                         {"cricket", Millimetres{12.5}, 380, 44, 352},
                         {"dubia roach", Millimetres{15}, 96, 9, 92}};
  for (int i = 0; i < 21; ++i)
    brief.supplies.days.push_back({from + days{i}, 100 + 31 * i, 80 + 22 * i, 9 * i});
  for (int i = 1; i < 12; ++i) brief.moults.push_back(moult_of(i));
  return brief;
}

TubReturn tub_of(int number, Day first) {
  TubReturn tub{.animal = animal_number(number), .enclosure = tub_number(number)};
  tub.place = {number % 2 == 0 ? "Kellerregal links" : "A", "12", std::to_string(number)};
  tub.name = longest;
  tub.then = "next moult most likely between Tuesday 4 and Saturday 22 February";
  tub.now = "next moult most likely between Friday 4 April and Thursday 19 June";
  if (number % 4 == 0) tub.refused = 3;
  if (number % 5 == 0) tub.moulted = first + days{2};
  if (number == 9)
    tub.flags = {{first + days{3},
                  "It lies beside its water with its legs drawn in, hardly moves when I mist, and "
                  "the dish was tipped over in the morning; I filled it again and closed the lid. "
                  "The one beside it, at position 10, sits high up on the lid and has not come "
                  "down for two days, but looks well to me otherwise.",
                  "018f.png"}};
  if (number == 11) tub.died = first + days{4};
  for (int i = 0; i < number % 3; ++i)
    tub.duties.push_back({Task::Offer, first + days{i}, Fate::Done, first + days{i + 2}});
  if (number == 12)
    for (int i = 0; i < 30; ++i)
      tub.duties.push_back({Task::MistAndCheckWater, first + days{i % 9}, Fate::NotDone, first});
  return tub;
}

// A keeper who has given the PIN, with racks, a stand-in and a cover that holds.
struct Away {
  TableKiosk kiosk;
  Day today = kiosk.clock.now().day();

  explicit Away(bool planned = true) {
    for (int i = 1; i <= 9; ++i)
      kiosk.house(
          i, longest,
          {i == 1 ? "Kellerregal links" : std::string(1, char('A' + i)), "1", std::to_string(i)});
    kiosk.works_here(keeper, Role::Keeper);
    if (planned) kiosk.sets(CoverPlanned{stand_in, today - days{3}, today + days{9}, {}});
    kiosk.works_here(stand_in, Role::Assistant, today + days{9});
    kiosk.pin.pin = "7294";
    kiosk.start();
    kiosk.scans(badge_of(keeper));
    kiosk.does(kiosk::Show{ScreenName::Cover});
    kiosk.types_pin("7294");
  }
  Away& does(const kiosk::Intent& intent) {
    kiosk.does(intent);
    return *this;
  }
  Away& foreseen() {
    return does(kiosk::CoverForeseen{*kiosk.model().cover_page.shown, much_to_get(today)});
  }
  Away& reported() {
    does(kiosk::Show{ScreenName::Returned});
    const auto shown = kiosk.model().return_page.shown;
    const Cover& cover = *kiosk.model().cover.cover(*shown);
    std::vector<TubReturn> tubs;
    for (int i = 1; i < 40; ++i) tubs.push_back(tub_of(i, cover.from));
    tubs[0].eaten = {{"cricket", Millimetres{8}, 412}, {"dubia roach", Millimetres{15}, 31}};
    Moment morning = kiosk.clock.now();
    morning.utc -= days{3};
    const std::vector<Moment> mornings = days_until(morning, today);
    return does(kiosk::ReturnTold{*shown, report_return(cover, std::move(tubs), mornings, {})});
  }
  // Nothing is brought back from now on.
  Away& waiting() {
    kiosk.effects_wait = true;
    return *this;
  }
  Away& filled_in(int from, int to) {
    does(kiosk::Show{ScreenName::NewCover});
    does(kiosk::Ask{kiosk::AskStandIn{}}).does(kiosk::AnswerWith{stand_in});
    does(kiosk::AskDay{kiosk::WhichDay::First}).does(kiosk::PickDay{today + days{from}});
    return does(kiosk::AskDay{kiosk::WhichDay::Last}).does(kiosk::PickDay{today + days{to}});
  }
  [[nodiscard]] Model model() const { return kiosk.model(); }
};

// Somebody who stands in, asked for a picture of what is wrong.
struct Flagging {
  Away away;
  Flagging() {
    away.does(kiosk::CameraFitted{true});
    away.kiosk.scans(badge_of(stand_in));
    away.kiosk.scans(tub_number(2));
    away.does(kiosk::Ask{kiosk::AskWrong{tub_number(2)}});
    away.does(kiosk::AnswerWith{"It drags a leg."});
  }
  Model sees(kiosk::CameraSight sight) {
    away.does(kiosk::CameraSeen{std::move(sight)});
    return away.model();
  }
};

}  // namespace

std::vector<Situation> away_situations() {
  return {
      {"cover_none", [] { return Away{false}.model(); }},
      {"cover_reading",
       [] {
         Away away;
         away.waiting().does(kiosk::Show{ScreenName::Cover});
         return away.does(kiosk::CoverWorked{*away.model().cover_page.shown, 0.7}).model();
       }},
      {"cover", [] { return Away{}.foreseen().model(); }},
      {"cover_moults", [] { return Away{}.foreseen().does(kiosk::Turn{5}).model(); }},
      {"cover_end_asked", [] { return Away{}.foreseen().does(kiosk::EndCover{}).model(); }},
      {"cover_printing",
       [] { return Away{}.foreseen().waiting().does(kiosk::PrintCover{}).model(); }},
      {"cover_two",
       [] { return Away{}.filled_in(20, 30).does(kiosk::PlanCover{}).foreseen().model(); }},
      {"new_cover", [] { return Away{}.does(kiosk::Show{ScreenName::NewCover}).model(); }},
      {"new_cover_overlaps",
       [] { return Away{}.filled_in(2, 15).does(kiosk::ToggleRack{"Kellerregal links"}).model(); }},
      {"new_cover_told",
       [] {
         Away away;
         away.does(kiosk::Show{ScreenName::NewCover}).does(kiosk::Ask{kiosk::AskContact{}});
         away.does(kiosk::AnswerWith{keeper}).does(kiosk::AnswerWith{"+31 20 555 01 00 ext. 4711"});
         away.does(kiosk::Ask{kiosk::AskCoverNote{}});
         return away
             .does(
                 kiosk::AnswerWith{"The lamp stays off. The plants on the sill are not mine; give "
                                   "them nothing. The key hangs behind the meter."})
             .model();
       }},
      {"words_number",
       [] {
         Away away;
         away.does(kiosk::Show{ScreenName::NewCover}).does(kiosk::Ask{kiosk::AskContact{}});
         return away.does(kiosk::AnswerWith{keeper}).does(kiosk::AnswerWith{"+"}).model();
       }},
      {"words_note",
       [] {
         Away away;
         away.does(kiosk::Show{ScreenName::NewCover}).does(kiosk::Ask{kiosk::AskCoverNote{}});
         for (const char c : std::string("the lamp stays off"))
           away.does(kiosk::Typed{std::string(1, c)});
         return away.model();
       }},
      {"days_first",
       [] {
         return Away{}
             .does(kiosk::Show{ScreenName::NewCover})
             .does(kiosk::AskDay{kiosk::WhichDay::First})
             .model();
       }},
      {"days_last",
       [] {
         return Away{}
             .filled_in(13, 20)
             .does(kiosk::AskDay{kiosk::WhichDay::Last})
             .does(kiosk::Turn{1})
             .model();
       }},
      {"returned_none", [] { return Away{false}.does(kiosk::Show{ScreenName::Returned}).model(); }},
      {"returned_reading",
       [] { return Away{}.waiting().does(kiosk::Show{ScreenName::Returned}).model(); }},
      {"returned", [] { return Away{}.reported().model(); }},
      {"returned_flags", [] { return Away{}.reported().does(kiosk::Turn{1}).model(); }},
      {"returned_much", [] { return Away{}.reported().does(kiosk::Turn{4}).model(); }},
      {"returned_last",
       [] { return Away{}.reported().does(kiosk::PrintCover{}).does(kiosk::Turn{99}).model(); }},
      {"picture_waiting", [] { return Flagging{}.away.model(); }},
      {"picture", [] { return Flagging{}.sees({.picture = 1, .width = 1280, .height = 720}); }},
      {"picture_lost",
       [] {
         return Flagging{}.sees(
             {.trouble = "The camera does not answer. Plug it in again; it is then used at once."});
       }},
      {"picture_not_kept",
       [] {
         Flagging flagging;
         flagging.away.kiosk.picture = failure(ErrorKind::Full, "There is no room for a picture.");
         flagging.away.does(kiosk::TakePicture{});
         return flagging.away.model();
       }},
  };
}

}  // namespace rackside::tests

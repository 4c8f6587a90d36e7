#include "tests/kiosk/screens/collections.hpp"

#include <cmath>

#include "tests/generators/events.hpp"
#include "tests/kiosk/screens/away.hpp"
#include "tests/kiosk/screens/hall.hpp"

namespace rackside::tests {
namespace {

using kiosk::Model;
using kiosk::ScreenName;

constexpr const char* longest = "Pseudohapalopus cf. spinulopalpus var. longissima \"Cordillera\"";

// One long history: three cycles, meals, refusals, signs.
void tell_a_life(TableKiosk& kiosk, const Code& tub) {
  for (int day = 400; day > 5; day -= 7) {
    const bool off_food = day % 130 < 35;
    kiosk.happened(
        tub, day,
        Offered{off_food ? Outcome::Refused : Outcome::Took, "cricket", 1, Millimetres{8}});
    if (off_food && day % 3 == 0) kiosk.happened(tub, day, Looked{{Sign::DarkAbdomen}});
    if (day % 130 < 7) kiosk.happened(tub, day - 1, ShedFound{});
  }
  kiosk.happened(tub, 2, Offered{Outcome::LeftOvernight, "cricket", 2, Millimetres{12.5}});
}

Forecast some_forecast(AnimalId animal, Instant as_of) {
  Forecast forecast{.animal = animal, .as_of = as_of, .phase = Phase::Premoult, .p_premoult = 0.83};
  for (std::size_t i = 0; i < moult_quantiles; ++i)
    forecast.next_moult[i] = 3 + 2.0 * static_cast<double>(i) + 0.06 * static_cast<double>(i * i);
  forecast.why = {{"refused 3 of the last 3 meals; it usually refuses 1 in 9", 2.1, {}},
                  {"the abdomen was seen dark and glossy on 3 November", 1.4, {}},
                  {"last moult 112 days ago; the last intervals were 98 and 121 days", 0.8, {}}};
  return forecast;
}

MoultDensity some_density() {
  MoultDensity density{.first_day = 0,
                       .a_day = {},
                       .median = 18,
                       .half = {12, 26},
                       .nine_tenths = {4, 44},
                       .moults = {}};
  for (int day = 0; day < 60; ++day) density.a_day.push_back(day * (60 - day) / 36000.0);
  return density;
}

struct Shelf {
  TableKiosk kiosk;
  Code first, last;

  Shelf() : first(kiosk.house(1, longest, {"Kellerregal links", "12", "104"})), last(first) {
    for (int i = 2; i <= 30; ++i)
      last = kiosk.house(i, i % 2 == 0 ? "Kochiana brunnipes" : longest,
                         {"A", std::to_string(1 + i / 10), std::to_string(i)});
    tell_a_life(kiosk, first);
    kiosk.happened(last, 40, Died{});
    kiosk.start();
  }
  Model show(ScreenName screen) {
    kiosk.does(kiosk::Show{screen});
    return kiosk.model();
  }
  void open_with_forecast() {
    kiosk.scans(first);
    // The phase decides the tiles when the tub is opened, so it is opened again.
    const Forecast forecast = some_forecast(kiosk.animal_of(first), kiosk.clock.now().utc);
    kiosk.does(kiosk::ForecastReady{forecast, some_density()});
    kiosk.scans(first);
    kiosk.does(kiosk::ForecastReady{forecast, some_density()});
  }
};

constexpr const char* shelf_eye =
    "/dev/v4l/by-id/usb-Long_Name_Optics_Shelf_Eye_1080p_SN0042-video-index0";

// Setup's camera page, with `sight` in it if there is one.
Model camera_page(const std::string& camera, const std::optional<kiosk::CameraSight>& sight,
                  std::vector<std::string> plugged_in = {}) {
  TableKiosk kiosk;
  kiosk.start();
  kiosk.does(kiosk::Show{ScreenName::Camera});
  kiosk::Settings settings = kiosk.model().settings;
  settings.camera = camera;
  settings.aim = {0.45, 0.5, 0.7};
  kiosk.does(kiosk::SetUp{settings});
  kiosk.does(kiosk::CamerasFound{std::move(plugged_in)});
  if (sight) kiosk.does(kiosk::CameraSeen{*sight});
  return kiosk.model();
}

kiosk::CameraSight live_sight(int width, int height) {
  kiosk::CameraSight sight{.camera = shelf_eye, .source = "camera Shelf Eye"};
  sight.picture = 1;
  sight.width = width;
  sight.height = height;
  return sight;
}
// The shelf with people: two keepers, many assistants, long names, one whose time is over.
struct Staff : Shelf {
  Staff() {
    kiosk.works_here("Maximiliane von der Heyden-Osterwald", Role::Keeper);
    for (const char* name : {"Ines", "Oskar", "Aiko", "Bartholomew", "Chidi", "Danuta", "Ewa"})
      kiosk.works_here(name, Role::Assistant);
    const Day day = kiosk.clock.now().day();
    kiosk.works_here("Wolfgang Amadeus Featherstonehaugh", Role::Assistant, day);
    kiosk.works_here("Yesterday's stand-in", Role::Assistant, day - std::chrono::days{1});
    kiosk.pin.pin = "7294";
    kiosk.start();
    kiosk.scans(badge_of(keeper()));
  }
  static std::string keeper() { return "Maximiliane von der Heyden-Osterwald"; }
  Model with_pin(const kiosk::Intent& then) {
    kiosk.does(kiosk::Show{ScreenName::People});
    kiosk.types_pin("7294");
    kiosk.does(then);
    return kiosk.model();
  }
};

Model empty_room() {
  TableKiosk kiosk;
  kiosk.start();
  kiosk.does(kiosk::Close{});
  return kiosk.model();
}

}  // namespace

const std::vector<Situation>& situations() {
  static const std::vector<Situation> list = with_away(with_hall({
      {"empty_room", empty_room},
      {"round", [] { return Shelf{}.show(ScreenName::Round); }},
      {"round_foreign_code",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::CodeRead{"https://example.org"});
         return shelf.kiosk.model();
       }},
      {"carry", [] { return Shelf{}.show(ScreenName::Carry); }},
      {"carry_many_prey",
       [] {
         Shelf shelf;
         for (int i = 0; i < 9; ++i) {
           const Code tub = shelf.kiosk.house(60 + i, "Haplocosmia himalayana");
           const double size = i < 5 ? 5 : 8;
           shelf.kiosk.happened(
               tub, 40,
               Offered{Outcome::Took,
                       i % 2 == 0 ? "Turkestan roach nymph" : "locust " + std::to_string(i), 1,
                       Millimetres{size}});
         }
         shelf.kiosk.start();
         return shelf.show(ScreenName::Carry);
       }},
      {"round_under_way",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::SetOut{});
         shelf.kiosk.scans(shelf.first);
         shelf.kiosk.does(kiosk::Record{Action::PreyRemoved});
         return shelf.show(ScreenName::Round);
       }},
      {"summary",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::SetOut{});
         shelf.kiosk.scans(shelf.first);
         shelf.kiosk.does(kiosk::Record{Action::PreyRemoved});
         shelf.kiosk.does(kiosk::EndRound{});
         return shelf.kiosk.model();
       }},
      {"tub",
       [] {
         Shelf shelf;
         shelf.open_with_forecast();
         return shelf.kiosk.model();
       }},
      {"tub_warmth",
       [] {
         Shelf shelf;
         constexpr int days = 35;
         shelf.kiosk.clock.advance(-std::chrono::hours{24 * days});
         for (int i = 0; i < days; ++i) {
           shelf.kiosk.sets(TemperatureRead{Celsius{24 + 3 * std::sin(i / 5.0)}, ""});
           shelf.kiosk.clock.advance(std::chrono::hours{24});
         }
         shelf.kiosk.start();
         shelf.open_with_forecast();
         return shelf.kiosk.model();
       }},
      {"tub_shared",
       [] {
         Shelf shelf;
         const Code other = shelf.kiosk.house(50, "Neoholothele incei");
         shelf.kiosk.happened(other, 1, Rehoused{shelf.first});
         shelf.kiosk.start();
         shelf.kiosk.scans(shelf.first);
         return shelf.kiosk.model();
       }},
      {"tub_more_tiles",
       [] {
         Shelf shelf;
         shelf.open_with_forecast();
         shelf.kiosk.does(kiosk::TurnTiles{});
         return shelf.kiosk.model();
       }},
      {"tub_saved",
       [] {
         Shelf shelf;
         shelf.open_with_forecast();
         shelf.kiosk.does(kiosk::Record{Action::LeftOvernight});
         return shelf.kiosk.model();
       }},
      {"tub_undone",
       [] {
         Shelf shelf;
         shelf.open_with_forecast();
         shelf.kiosk.does(kiosk::Record{Action::LeftOvernight});
         shelf.kiosk.does(kiosk::Record{Action::Undo});
         return shelf.kiosk.model();
       }},
      {"tub_died",
       [] {
         Shelf shelf;
         shelf.kiosk.scans(shelf.last);
         return shelf.kiosk.model();
       }},
      {"records",
       [] {
         Shelf shelf;
         shelf.open_with_forecast();
         shelf.kiosk.does(kiosk::Record{Action::Misted});
         shelf.kiosk.does(kiosk::Record{Action::Undo});
         return shelf.show(ScreenName::Records);
       }},
      {"records_meals",
       [] {
         Shelf shelf;
         shelf.open_with_forecast();
         shelf.kiosk.does(kiosk::Show{ScreenName::Records});
         shelf.kiosk.does(kiosk::NextFilter{});
         return shelf.kiosk.model();
       }},
      {"correct",
       [] {
         Shelf shelf;
         shelf.open_with_forecast();
         shelf.kiosk.does(kiosk::LookAt{shelf.kiosk.model().tub->history->back().id});
         return shelf.kiosk.model();
       }},
      {"correct_signs",
       [] {
         Shelf shelf;
         shelf.open_with_forecast();
         shelf.kiosk.does(kiosk::Record{Action::DarkAbdomen});
         shelf.kiosk.does(kiosk::LookAt{shelf.kiosk.model().tub->history->back().id});
         shelf.kiosk.does(kiosk::CorrectDay{9});
         return shelf.kiosk.model();
       }},
      {"who",
       [] {
         Staff staff;
         staff.kiosk.does(kiosk::StepAside{});
         staff.kiosk.scans(staff.first);
         staff.kiosk.does(kiosk::Record{Action::Misted});
         return staff.kiosk.model();
       }},
      {"who_unknown_badge",
       [] {
         Staff staff;
         staff.kiosk.does(kiosk::Show{ScreenName::Who});
         staff.kiosk.scans(badge_of("Yesterday's stand-in"));
         return staff.kiosk.model();
       }},
      {"pin",
       [] {
         Staff staff;
         staff.kiosk.scans(staff.first);
         staff.kiosk.does(kiosk::Record{Action::Died});
         for (const char* digit : {"7", "2"}) staff.kiosk.does(kiosk::Typed{digit});
         return staff.kiosk.model();
       }},
      {"pin_too_many_tries",
       [] {
         Staff staff;
         staff.kiosk.does(kiosk::Leave{});
         for (int i = 0; i < 4; ++i) staff.kiosk.types_pin("7000");
         return staff.kiosk.model();
       }},
      {"pin_new", [] { return Staff{}.with_pin(kiosk::ChangePin{}); }},
      {"pin_too_simple",
       [] {
         Staff staff;
         staff.with_pin(kiosk::ChangePin{});
         staff.kiosk.types_pin("1234");
         return staff.kiosk.model();
       }},
      {"pin_again",
       [] {
         Staff staff;
         staff.with_pin(kiosk::ChangePin{});
         staff.kiosk.types_pin("48271936");
         return staff.kiosk.model();
       }},
      {"people_none", [] { return Shelf{}.show(ScreenName::People); }},
      {"people", [] { return Staff{}.with_pin(kiosk::Turn{0}); }},
      {"people_over", [] { return Staff{}.with_pin(kiosk::Turn{1}); }},
      {"person", [] { return Staff{}.with_pin(kiosk::OpenPerson{Staff::keeper()}); }},
      {"person_only_keeper",
       [] {
         Staff staff;
         staff.with_pin(kiosk::OpenPerson{Staff::keeper()});
         staff.kiosk.does(kiosk::EndAccess{});
         return staff.kiosk.model();
       }},
      {"person_over", [] { return Staff{}.with_pin(kiosk::OpenPerson{"Yesterday's stand-in"}); }},
      {"person_name",
       [] {
         Staff staff;
         staff.with_pin(kiosk::Ask{kiosk::AskPerson{Role::Assistant}});
         for (const char c : std::string("ines")) staff.kiosk.does(kiosk::Typed{std::string(1, c)});
         staff.kiosk.does(kiosk::Enter{});
         return staff.kiosk.model();
       }},
      {"refused_to_assistant",
       [] {
         Staff staff;
         staff.kiosk.scans(badge_of("Oskar"));
         staff.kiosk.scans(staff.first);
         staff.kiosk.does(kiosk::Record{Action::Died});
         return staff.kiosk.model();
       }},
      {"plain_tub",
       [] {
         Staff staff;
         staff.kiosk.scans(badge_of("Oskar"));
         staff.kiosk.scans(staff.first);
         return staff.kiosk.model();
       }},
      {"plain_tub_offer",
       [] {
         Staff staff;
         staff.kiosk.scans(badge_of("Oskar"));
         staff.kiosk.scans(tub_number(3));
         return staff.kiosk.model();
       }},
      {"plain_tub_flagged",
       [] {
         Staff staff;
         staff.kiosk.scans(badge_of("Oskar"));
         staff.kiosk.scans(tub_number(3));
         staff.kiosk.does(kiosk::Ask{kiosk::AskWrong{tub_number(3)}});
         staff.kiosk.does(kiosk::AnswerWith{"It lies beside its water and hardly moves."});
         return staff.kiosk.model();
       }},
      {"what_is_wrong",
       [] {
         Staff staff;
         staff.kiosk.scans(badge_of("Oskar"));
         staff.kiosk.scans(staff.first);
         staff.kiosk.does(kiosk::Ask{kiosk::AskWrong{staff.first}});
         for (const char* c : {"h", "u", "r", "t"}) staff.kiosk.does(kiosk::Typed{c});
         return staff.kiosk.model();
       }},
      {"drawer_stand_in",
       [] {
         Staff staff;
         staff.kiosk.scans(badge_of("Oskar"));
         return staff.show(ScreenName::Drawer);
       }},
      {"keypad",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::Show{ScreenName::Keypad});
         for (const char* c : {"T", "4", "K"}) shelf.kiosk.does(kiosk::Typed{c});
         return shelf.kiosk.model();
       }},
      {"keypad_wrong",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::Show{ScreenName::Keypad});
         for (const char c : std::string("T4K7M2X0"))
           shelf.kiosk.does(kiosk::Typed{std::string(1, c)});
         return shelf.kiosk.model();
       }},
      {"find",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::Show{ScreenName::Find});
         for (const char* c : {"p", "s", "e"}) shelf.kiosk.does(kiosk::Typed{c});
         return shelf.kiosk.model();
       }},
      {"drawer", [] { return Shelf{}.show(ScreenName::Drawer); }},
      {"setup", [] { return Shelf{}.show(ScreenName::Setup); }},
      {"camera_none", [] { return camera_page("", std::nullopt); }},
      {"camera_reads",
       [] {
         auto sight = live_sight(640, 480);
         sight.code = tub_number(1);
         sight.our_codes = 2;
         sight.read = {{{{250, 180}, {340, 190}, {335, 280}, {245, 270}}}};
         sight.unread = {{{{400, 100}, {470, 100}, {470, 170}, {400, 170}}}};
         return camera_page(shelf_eye, sight, {shelf_eye});
       }},
      {"camera_lost",
       [] {
         auto sight = live_sight(1280, 720);
         sight.trouble = "The camera does not answer. Plug it in again; it is then used at once.";
         return camera_page(
             shelf_eye, sight,
             {"/dev/v4l/by-id/usb-A-video-index0", "/dev/v4l/by-id/usb-B-video-index0",
              "/dev/v4l/by-id/usb-C-video-index0"});
       }},
      {"bring_in",
       [] {
         Shelf shelf;
         for (int i = 0; i < 14; ++i)
           shelf.kiosk.record_files.push_back(
               {"/media/x/" + std::to_string(i),
                i == 1 ? std::string(longest) + ".csv" : "animals.csv", i == 2 ? longest : "BLUE"});
         return shelf.show(ScreenName::BringIn);
       }},
      {"bring_in_none", [] { return Shelf{}.show(ScreenName::BringIn); }},
      {"bring_in_counted",
       [] {
         Shelf shelf;
         shelf.kiosk.record_files = {{"/media/x/animals.csv", "animals.csv", "BLUE"}};
         shelf.kiosk.record_counts = kiosk::RecordCounts{2'000, 1'998, 0, 12};
         shelf.kiosk.does(kiosk::Show{ScreenName::BringIn});
         shelf.kiosk.does(kiosk::LookInto{"/media/x/animals.csv"});
         return shelf.kiosk.model();
       }},
      {"bring_in_writing",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::Show{ScreenName::BringIn});
         shelf.kiosk.does(kiosk::PartBroughtIn{{124'000, 500'000}});
         return shelf.kiosk.model();
       }},
      {"new_tubs", [] { return Shelf{}.show(ScreenName::NewTubs); }},
      {"new_tubs_filled",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::Show{ScreenName::NewTubs});
         shelf.kiosk.does(kiosk::Ask{kiosk::AskNewTub{kiosk::NewTubField::Species}});
         shelf.kiosk.does(kiosk::AnswerWith{longest});
         shelf.kiosk.does(kiosk::Ask{kiosk::AskNewTub{kiosk::NewTubField::Count}});
         shelf.kiosk.does(kiosk::AnswerWith{"4800"});
         shelf.kiosk.does(kiosk::MakeTubs{});
         return shelf.kiosk.model();
       }},
      {"words",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::Ask{kiosk::AskNewTub{kiosk::NewTubField::Species}});
         for (const char* c : {"p", "s", "e"}) shelf.kiosk.does(kiosk::Typed{c});
         return shelf.kiosk.model();
       }},
      {"words_refused",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::Ask{kiosk::AskNewTub{kiosk::NewTubField::Count}});
         shelf.kiosk.does(
             kiosk::AnswerWith{"many and a good deal more than anyone can count in a day"});
         return shelf.kiosk.model();
       }},
      {"find_nothing",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::Show{ScreenName::Find});
         for (const char* c : {"x", "x"}) shelf.kiosk.does(kiosk::Typed{c});
         return shelf.kiosk.model();
       }},
  }));
  return list;
}

const std::vector<kiosk::Panel>& panels() {
  static const std::vector<kiosk::Panel> list{kiosk::panel_of(800, 480), kiosk::panel_of(1024, 600),
                                              kiosk::panel_of(1280, 800),
                                              kiosk::panel_of(800, 1280)};
  return list;
}

}  // namespace rackside::tests

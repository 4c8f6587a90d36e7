// The whole thing, as a person uses it: the real program in a real window. What it said was saved
// is in the log after a power cut, and nothing else is.

#include <chrono>
#include <fstream>
#include <thread>

#include "core/people/people.hpp"
#include "core/store/sqlite_log.hpp"
#include "fonts/font_files.hpp"
#include "kiosk/draw/font_book.hpp"
#include "kiosk/screens/screens.hpp"
#include "labels/picture/picture_file.hpp"
#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"
#include "tests/kiosk/program/desk.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace std::chrono_literals;

namespace {

// Ten tubs, written into a new log file.
std::vector<Code> furnish(const std::string& path) {
  auto log = SqliteLog::open(path, Access::Write).value();
  std::vector<Draft> drafts;
  std::vector<Code> tubs;
  for (int i = 0; i < 10; ++i) {
    tubs.push_back(tub_number(i));
    const When when = at_hour(i);
    drafts.push_back({.id = event_number(2 * i),
                      .by = {},
                      .when = when,
                      .animal = {},
                      .enclosure = tubs.back(),
                      .details = EnclosureAdded{{"A", "1", std::to_string(i)}},
                      .note = {}});
    drafts.push_back(
        {.id = event_number(2 * i + 1),
         .by = {},
         .when = when,
         .animal = animal_number(i),
         .enclosure = tubs.back(),
         .details = AnimalAdded{.key = "k" + std::to_string(i), .species = "Kochiana brunnipes"},
         .note = {}});
  }
  REQUIRE(log->append(drafts, at_hour(0).moment.utc));
  return tubs;
}

std::optional<Desk> desk_or_skip() {
  auto desk = Desk::open();
  if (!desk) WARN("skipped: Xvfb or xdotool is not here");
  return desk;
}

// Where a key or tile stands, worked out from the same layout.
kiosk::Spot place_in(const kiosk::Model& model, const std::string& word) {
  static const auto fonts = kiosk::FontBook::open(running_program()).value();
  const auto scene = compose(model, kiosk::panel_of(1280, 800), *fonts);
  for (const auto& target : scene.targets)
    if (target.word == word) return target.box.middle();
  FAIL("there is no tile " << word);
  return {};
}

// On the tub screen.
kiosk::Spot place_of(const std::string& word) {
  TableKiosk table;
  const Code tub = table.house(1, "Kochiana brunnipes");
  table.start();
  table.scans(tub);
  return place_in(table.model(), word);
}

void tap(Desk& desk, const std::string& word) {
  const kiosk::Spot spot = place_of(word);
  desk.click(spot.x, spot.y);
}

// Scans a card, again where the tub was still being read or a busy machine tore the burst, as a
// person would.
bool card(Desk& desk, Action action, const std::string& sentence, int times = 1) {
  for (int tries = 0; tries < 4; ++tries) {
    desk.scan(action_code(action));
    if (desk.tells(sentence, times, 4s)) return true;
  }
  return false;
}

std::vector<std::string> standing_kinds(const std::string& path, int animal) {
  auto log = SqliteLog::open(path, Access::Read).value();
  std::vector<std::string> kinds;
  const auto events = standing(log->read_animal(animal_number(animal)).value());
  for (const Event& event : events)
    if (!std::holds_alternative<AnimalAdded>(event.details))
      kinds.emplace_back(kind_name(event.details));
  return kinds;
}

}  // namespace

TEST_CASE("a round by scan, tap and card survives a power cut exactly as it was acknowledged") {
  auto desk = desk_or_skip();
  if (!desk) return;
  const auto tubs = furnish(desk->log());
  desk->start_kiosk();

  desk->scan(tubs[0]);
  std::this_thread::sleep_for(500ms);
  tap(*desk, "refused");
  REQUIRE(desk->tells("Saved: refused."));

  desk->scan(tubs[1]);
  std::this_thread::sleep_for(300ms);
  REQUIRE(card(*desk, Action::ShedFound, "Saved: shed found."));
  REQUIRE(card(*desk, Action::Undo, "Undone. Both entries stay in the records."));
  REQUIRE(card(*desk, Action::Misted, "Saved: misted."));

  desk->scan(tubs[2]);
  std::this_thread::sleep_for(300ms);
  REQUIRE(card(*desk, Action::Took, "Saved: took."));
  desk->kill_kiosk();

  CHECK(standing_kinds(desk->log(), 0) == std::vector<std::string>{"offered"});
  CHECK(standing_kinds(desk->log(), 1) == std::vector<std::string>{"misted"});
  CHECK(standing_kinds(desk->log(), 2) == std::vector<std::string>{"offered"});
  for (int animal = 3; animal < 10; ++animal) CHECK(standing_kinds(desk->log(), animal).empty());

  // Started again, it goes on from there.
  desk->start_kiosk();
  desk->scan(tubs[3]);
  std::this_thread::sleep_for(500ms);
  REQUIRE(card(*desk, Action::Refused, "Saved: refused.", 2));
  desk->kill_kiosk();
  CHECK(standing_kinds(desk->log(), 3) == std::vector<std::string>{"offered"});

  // And the export says the same: one line each, the undone shed not among them.
  std::string said;
  REQUIRE(run({std::string(RACKSIDE_BIN_DIR) + "/rackside-log", "--log", desk->log(), "export",
               "--events", (desk->folder() / "events.csv").string()},
              said) == 0);
  std::ifstream file(desk->folder() / "events.csv");
  std::vector<std::string> rows;
  for (std::string line; std::getline(file, line);) rows.push_back(line);
  CHECK(rows.size() == 1 + 4);
  CHECK(std::ranges::none_of(
      rows, [](const auto& row) { return row.find("shed found") != std::string::npos; }));
}

TEST_CASE("a person's typing and a foreign label do no harm to the real program") {
  auto desk = desk_or_skip();
  if (!desk) return;
  const auto tubs = furnish(desk->log());
  desk->start_kiosk();
  desk->type("hello");
  desk->scan(tubs[0]);
  std::this_thread::sleep_for(300ms);
  desk->scan("https://example.org/not-ours");
  CHECK(desk->tells("This label is not one of ours."));
  desk->type("T");
  desk->key("Escape");
  desk->scan(tubs[4]);
  std::this_thread::sleep_for(300ms);
  REQUIRE(card(*desk, Action::WaterFilled, "Saved: water filled."));
  desk->kill_kiosk();
  CHECK(standing_kinds(desk->log(), 4) == std::vector<std::string>{"water filled"});
}

TEST_CASE("a printed label held before the camera opens its tub") {
  auto desk = desk_or_skip();
  if (!desk) return;
  const auto tubs = furnish(desk->log());
  const auto picture = desk->folder() / "label.png";
  const std::string tub(tubs[6].text());
  std::string said;
  REQUIRE(run({std::string(RACKSIDE_BIN_DIR) + "/rackside-labels", "--log", desk->log(), "sheet",
               "--tub", tub, "--sheet", "roll-29", "-o", picture.string()},
              said) == 0);
  std::filesystem::create_directory(desk->folder() / "frames");
  desk->start_kiosk({"--frames", (desk->folder() / "frames").string()});
  // The label as a camera sees it, its symbol in the middle; moved into the folder whole, as a
  // camera program would leave it there.
  const auto frame = desk->folder() / "frame.png";
  REQUIRE(run({"convert", picture.string(), "-gravity", "West", "-crop", "225x225+0+0", "+repage",
               "-gravity", "Center", "-background", "white", "-extent", "640x480", frame.string()},
              said) == 0);
  std::filesystem::rename(frame, desk->folder() / "frames" / "1.png");
  std::this_thread::sleep_for(3s);
  REQUIRE(card(*desk, Action::Misted, "Saved: misted."));
  desk->kill_kiosk();
  CHECK(standing_kinds(desk->log(), 6) == std::vector<std::string>{"misted"});
}

namespace {

Draft joins(int order, const std::string& name, Role role) {
  return {.id = event_number(order),
          .by = name,
          .when = at_hour(order),
          .animal = {},
          .enclosure = {},
          .details = PersonAdded{name, role, {}},
          .note = {}};
}

// What somebody who stands in touches to say what is wrong, and to take a picture of it.
struct StandIn {
  TableKiosk table;
  kiosk::Spot something_is_wrong, take_the_picture;

  StandIn() {
    const Code tub = table.house(1, "Kochiana brunnipes");
    table.works_here("Ines", Role::Keeper);
    table.works_here("Oskar", Role::Assistant);
    table.start();
    table.does(kiosk::CameraFitted{true});
    table.scans(badge_of("Oskar"));
    table.scans(tub);
    something_is_wrong = place_in(table.model(), "something is wrong");
    table.does(kiosk::Ask{kiosk::AskWrong{tub}});
    table.does(kiosk::AnswerWith{"limp"});
    table.does(kiosk::CameraSeen{{.picture = 1, .width = 64, .height = 48}});
    take_the_picture = place_in(table.model(), "take the picture");
  }
};

std::vector<Event> flags_of(const std::string& path, int animal) {
  auto log = SqliteLog::open(path, Access::Read).value();
  auto events = log->read_animal(animal_number(animal)).value();
  std::erase_if(events,
                [](const Event& event) { return !std::holds_alternative<Flagged>(event.details); });
  return events;
}

}  // namespace

TEST_CASE("what is wrong is in the log after a power cut, and its picture beside it") {
  auto desk = desk_or_skip();
  if (!desk) return;
  const auto tubs = furnish(desk->log());
  {
    auto log = SqliteLog::open(desk->log(), Access::Write).value();
    REQUIRE(log->append({joins(90, "Ines", Role::Keeper), joins(91, "Oskar", Role::Assistant)},
                        at_hour(91).moment.utc));
  }
  std::filesystem::create_directory(desk->folder() / "frames");
  std::string said;
  REQUIRE(run({"convert", "-size", "64x48", "gradient:black-white",
               (desk->folder() / "frames" / "1.png").string()},
              said) == 0);
  desk->start_kiosk({"--frames", (desk->folder() / "frames").string()});
  const StandIn hand;
  desk->scan(badge_of("Oskar"));
  REQUIRE(desk->tells("Oskar is at the kiosk."));
  desk->scan(tubs[5]);
  std::this_thread::sleep_for(500ms);
  desk->click(hand.something_is_wrong.x, hand.something_is_wrong.y);
  desk->type("limp");
  desk->key("Return");
  std::this_thread::sleep_for(1500ms);
  desk->click(hand.take_the_picture.x, hand.take_the_picture.y);
  REQUIRE(desk->tells("Saved. The keeper will see it; call them if it cannot wait."));
  desk->kill_kiosk();
  const auto flags = flags_of(desk->log(), 5);
  REQUIRE(flags.size() == 1);
  CHECK(flags.front().note == "Limp");
  CHECK(flags.front().by == "Oskar");
  const std::string name = std::get<Flagged>(flags.front().details).picture;
  CHECK(name == format_uuid(flags.front().id.value) + ".png");
  const auto pictures = load_pictures(desk->log() + ".pictures/" + name);
  REQUIRE(pictures);
  CHECK(*pictures == load_pictures(desk->folder() / "frames" / "1.png").value());
}

TEST_CASE("a second kiosk on the same log is told so and leaves the first alone") {
  auto desk = desk_or_skip();
  if (!desk) return;
  const auto tubs = furnish(desk->log());
  desk->start_kiosk();
  std::string said;
  CHECK(run({std::string(RACKSIDE_BIN_DIR) + "/rackside", "--log", desk->log()}, said) == 1);
  INFO(said);
  CHECK(said.find("rackside: ") == 0);
  CHECK(std::ranges::count(said, '\n') == 1);
  desk->scan(tubs[0]);
  std::this_thread::sleep_for(300ms);
  CHECK(card(*desk, Action::Took, "Saved: took."));
}

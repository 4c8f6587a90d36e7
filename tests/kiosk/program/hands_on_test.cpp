// A batch, a search, a correction and setup in the real program, by mouse and keyboard.

#include <algorithm>
#include <fstream>
#include <thread>

#include "core/overview/overview.hpp"
#include "core/store/sqlite_log.hpp"
#include "fonts/font_files.hpp"
#include "kiosk/draw/font_book.hpp"
#include "kiosk/screens/screens.hpp"
#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"
#include "tests/kiosk/program/desk.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace std::chrono_literals;

namespace {

// A kiosk on the table that is taken through the same steps as the real one, so that it is known
// where the real one's keys are.
struct Pair {
  Desk& desk;
  TableKiosk table;

  void tap(const std::string& word) {
    static const auto fonts = kiosk::FontBook::open(running_program()).value();
    const auto scene = compose(table.model(), kiosk::panel_of(1280, 800), *fonts);
    for (const auto& target : scene.targets) {
      if (target.word != word) continue;
      const auto spot = target.box.middle();
      const kiosk::Intent intent = target.intent;
      desk.click(spot.x, spot.y);
      std::this_thread::sleep_for(600ms);
      table.does(intent);
      return;
    }
    FAIL("there is no " << word);
  }
  void type(const std::string& text) {
    desk.type(text);
    std::this_thread::sleep_for(400ms);
    for (const char c : text) table.does(kiosk::Typed{std::string(1, c)});
  }
  void enter() {
    desk.key("Return");
    std::this_thread::sleep_for(400ms);
    table.does(kiosk::Enter{});
  }
};

Roster roster_in(const std::string& path) {
  auto log = SqliteLog::open(path, Access::Read).value();
  return read_roster(*log).value();
}

std::vector<Event> standing_about(const std::string& path, const AnimalId& animal) {
  auto log = SqliteLog::open(path, Access::Read).value();
  return standing(log->read_animal(animal).value());
}

}  // namespace

TEST_CASE("a batch made at the kiosk is found by keyboard and recorded") {
  auto desk = Desk::open();
  if (!desk) {
    WARN("skipped: Xvfb or xdotool is not here");
    return;
  }
  desk->start_kiosk();
  Pair pair{*desk, {}};
  pair.table.start();

  // A first start asks who keeps the collection; it can be put off.
  while (pair.table.model().screen != kiosk::ScreenName::Round) pair.tap("back");
  pair.tap("first tub");
  pair.tap("species");
  pair.type("orphnaecus philippinus");
  pair.enter();
  pair.tap("how many tubs");
  pair.type("3");
  pair.enter();
  pair.tap("write and print");
  const std::string label = "3 labels on 1 page: " + (desk->folder() / "labels-").string();
  bool printed = false;
  for (int i = 0; i < 200 && !printed; ++i) {
    std::this_thread::sleep_for(50ms);
    for (const std::string& line : desk->told()) printed = printed || line.starts_with(label);
  }
  CHECK(printed);
  const Roster roster = roster_in(desk->log());
  REQUIRE(roster.collection.enclosures.size() == 3);
  const auto& [code, tub] = *roster.collection.enclosures.begin();
  const AnimalId animal = tub.residents.front();
  CHECK(roster.collection.animal(animal)->species == "Orphnaecus philippinus");

  // By keyboard alone: its code, typed as a person types, and Enter.
  desk->key("Escape");
  std::this_thread::sleep_for(500ms);
  desk->click(320, 740);  // find: nothing is due on a first day, so it is the first key
  std::this_thread::sleep_for(500ms);
  desk->type(std::string(code.text()));
  desk->key("Return");
  std::this_thread::sleep_for(800ms);
  desk->scan(action_code(Action::Took));
  REQUIRE(desk->tells("Saved: took."));
  const auto events = standing_about(desk->log(), animal);
  CHECK(std::ranges::any_of(
      events, [](const Event& event) { return std::holds_alternative<Offered>(event.details); }));
  desk->kill_kiosk();
}

TEST_CASE("a mistake is put right by touch, and both entries stay") {
  auto desk = Desk::open();
  if (!desk) return;
  Pair pair{*desk, {}};
  const Code tub = pair.table.house(1, "Kochiana brunnipes");
  pair.table.happened(tub, 2, Offered{Outcome::Took});
  std::vector<Event> events;
  REQUIRE(pair.table.log.read_all([&](Event&& event) { events.push_back(std::move(event)); }));
  REQUIRE(SqliteLog::open(desk->log(), Access::Write).value()->merge(events));
  desk->start_kiosk();
  pair.table.start();
  desk->scan(tub);
  pair.table.scans(tub);
  std::this_thread::sleep_for(800ms);
  pair.tap("records");
  pair.tap("put right");
  pair.tap("refused");
  REQUIRE(desk->tells("Saved: refused."));
  desk->kill_kiosk();
  const auto now = standing_about(desk->log(), pair.table.animal_of(tub));
  REQUIRE(now.size() == 2);  // it came, it refused
  CHECK(std::get<Offered>(now.back().details).outcome == Outcome::Refused);
  CHECK(now.back().when == events.back().when);
  auto log = SqliteLog::open(desk->log(), Access::Read).value();
  CHECK(log->read_animal(pair.table.animal_of(tub))->size() == 4);
}

TEST_CASE("what is chosen in setup holds after a restart") {
  auto desk = Desk::open();
  if (!desk) return;
  desk->start_kiosk();
  Pair pair{*desk, {}};
  pair.table.start();
  while (pair.table.model().screen != kiosk::ScreenName::Round) pair.tap("back");
  pair.tap("setup");
  pair.tap("night");
  std::this_thread::sleep_for(500ms);
  desk->kill_kiosk();
  std::ifstream file(desk->folder() / "log.settings.toml");
  const std::string text{std::istreambuf_iterator<char>(file), {}};
  CHECK(text.find("palette = 'night'") != std::string::npos);
}

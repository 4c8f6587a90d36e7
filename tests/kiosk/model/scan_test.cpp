// What a scan does, whatever is open.

#include "core/code/code_of_name.hpp"
#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;
using kiosk::ScreenName;

TEST_CASE("a scanned tub opens from every screen in one step") {
  for (const ScreenName screen : {ScreenName::Round, ScreenName::Tub, ScreenName::Keypad,
                                  ScreenName::Find, ScreenName::Records}) {
    TableKiosk kiosk;
    const Code first = kiosk.house(1, "Kochiana brunnipes");
    const Code second = kiosk.house(2, "Idiothele nigrofulva");
    kiosk.start();
    kiosk.scans(first);
    kiosk.does(kiosk::Show{screen});
    kiosk.scans(second);
    CHECK(kiosk.model().screen == ScreenName::Tub);
    CHECK(kiosk.model().tub->code == second);
    CHECK(shown_animal(kiosk.model())->species == "Idiothele nigrofulva");
    CHECK(kiosk.model().tub->history.has_value());
  }
}

TEST_CASE("a foreign code opens nothing and changes nothing but the notice") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Kochiana brunnipes");
  kiosk.start();
  kiosk.scans(tub);
  const auto before = kiosk.model();
  for (const std::string& foreign :
       {std::string("https://example.org/a"), std::string(3000, '\x01'), std::string{},
        std::string("4006381333931")}) {
    kiosk.does(kiosk::CodeRead{foreign});
    CHECK(kiosk.notice() == "This label is not one of ours.");
    CHECK(kiosk.model().tub == before.tub);
    CHECK(kiosk.model().collection == before.collection);
  }
  CHECK(kiosk.log_of(tub).empty());
}

TEST_CASE("a damaged code says that its check character does not fit") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Kochiana brunnipes");
  kiosk.start();
  std::string damaged(tub.text());
  damaged[3] = damaged[3] == '0' ? '1' : '0';
  kiosk.does(kiosk::CodeRead{damaged});
  CHECK(kiosk.notice().find("check character") != std::string::npos);
  CHECK_FALSE(kiosk.model().tub);
}

TEST_CASE("a tub that is not in the log is looked for, then told") {
  TableKiosk kiosk;
  kiosk.house(1, "Kochiana brunnipes");
  kiosk.start();
  kiosk.scans(tub_number(77));
  CHECK(kiosk.notice().find("no tub in this collection has it") != std::string::npos);
  CHECK(kiosk.model().screen == ScreenName::Round);
}

TEST_CASE("a tub that another program added since is found") {
  TableKiosk kiosk;
  kiosk.start();
  const Code tub = kiosk.house(3, "Orphnaecus philippinus");
  kiosk.scans(tub);
  CHECK(kiosk.model().screen == ScreenName::Tub);
  CHECK(shown_animal(kiosk.model())->species == "Orphnaecus philippinus");
}

TEST_CASE("a code of the wrong kind for the moment is named") {
  TableKiosk kiosk;
  kiosk.start();
  Result<Code> shelf = make_code(CodeKind::Shelf, "000000");
  for (char last = '1'; !shelf; ++last)
    shelf = make_code(CodeKind::Shelf, std::string("00000") + last);
  kiosk.scans(*shelf);
  CHECK(kiosk.notice() == "No tub of this collection stands on this shelf.");
  kiosk.scans_card(Action::Refused);
  CHECK(kiosk.notice() == "Scan a tub first, then the card. Nothing was recorded.");
}

TEST_CASE("a scanned shelf opens the map there") {
  TableKiosk kiosk;
  kiosk.house(1, "Kochiana brunnipes", {"A", "1", "1"});
  const Code there = kiosk.house(2, "Kochiana brunnipes", {"Kellerregal links", "12", "3"});
  kiosk.start();
  kiosk.scans(code_of_shelf("Kellerregal links", "12"));
  CHECK(kiosk.model().screen == ScreenName::Map);
  CHECK(kiosk.model().map == kiosk::MapPage{"Kellerregal links", "12"});
  // A tub that is opened from there is where the map stands when one comes back.
  kiosk.does(kiosk::OpenTub{there});
  kiosk.does(kiosk::Close{});
  CHECK(kiosk.model().screen == ScreenName::Map);
  CHECK(kiosk.model().last_tub == there);
  CHECK(kiosk.model().map == kiosk::MapPage{"Kellerregal links", std::nullopt});
}

TEST_CASE("the tub of an animal that died says so and takes no records") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Kochiana brunnipes");
  kiosk.happened(tub, 3, Died{});
  kiosk.start();
  kiosk.scans(tub);
  CHECK(shown_animal(kiosk.model())->life == Life::Died);
  kiosk.scans_card(Action::Took);
  CHECK(kiosk.notice() == "Nobody lives in this tub. Nothing was recorded.");
  CHECK(kiosk.log_of(tub) == std::vector<std::string>{"died"});
}

TEST_CASE("the first scan of a printed label confirms it, once") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Kochiana brunnipes");
  Draft printed{.id = event_number(5),
                .by = {},
                .when = at_hour(1),
                .animal = {},
                .enclosure = tub,
                .details = LabelPrinted{},
                .note = {}};
  REQUIRE(kiosk.log.append({printed}, at_hour(1).moment.utc));
  kiosk.start();
  kiosk.scans(tub);
  kiosk.scans(tub);
  std::size_t confirmations = 0;
  const auto events = kiosk.log.read_enclosure(tub).value();
  for (const Event& event : events)
    confirmations += std::holds_alternative<LabelConfirmed>(event.details) ? 1 : 0;
  CHECK(confirmations == 1);
  CHECK(kiosk.model().collection.enclosure(tub)->label_confirmed.has_value());
}

TEST_CASE("an answer for a tub that is no longer open is dropped") {
  TableKiosk kiosk;
  const Code first = kiosk.house(1, "Kochiana brunnipes");
  const Code second = kiosk.house(2, "Idiothele nigrofulva");
  kiosk.start();
  kiosk.effects_wait = true;
  kiosk.scans(first);
  kiosk.scans(second);
  kiosk.effects_wait = false;
  kiosk.run_waiting();
  CHECK(kiosk.model().tub->code == second);
  CHECK(kiosk.model().tub->history->front().animal == kiosk.animal_of(second));
}

// What a tap or a card writes, and how it is taken back.

#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace std::chrono_literals;
using Kinds = std::vector<std::string>;

namespace {

struct OpenTub {
  TableKiosk kiosk;
  Code tub;

  OpenTub() : tub(kiosk.house(1, "Kochiana brunnipes")) {
    kiosk.start();
    kiosk.scans(tub);
  }
};

}  // namespace

TEST_CASE("one tap records, and the card records the same") {
  OpenTub tapped;
  OpenTub scanned;
  for (const Action action : all_actions) {
    if (action == Action::Undo || action == Action::Died) continue;
    tapped.kiosk.does(kiosk::Record{action});
    scanned.kiosk.scans_card(action);
    tapped.kiosk.clock.advance(2min);
    scanned.kiosk.clock.advance(2min);
  }
  const auto by_tap = tapped.kiosk.log.read_animal(tapped.kiosk.animal_of(tapped.tub)).value();
  const auto by_card = scanned.kiosk.log.read_animal(scanned.kiosk.animal_of(scanned.tub)).value();
  REQUIRE(by_tap.size() == all_actions.size() - 2 + 1);
  REQUIRE(by_card.size() == by_tap.size());
  for (std::size_t i = 0; i < by_tap.size(); ++i) {
    CHECK(by_tap[i].details == by_card[i].details);
    CHECK(by_tap[i].by == by_card[i].by);
    CHECK(by_tap[i].when == by_card[i].when);
  }
}

TEST_CASE("saved is shown only after the log has it") {
  OpenTub open;
  open.kiosk.effects_wait = true;
  open.kiosk.does(kiosk::Record{Action::Refused});
  CHECK(open.kiosk.notice().empty());
  CHECK_FALSE(open.kiosk.model().undo);
  open.kiosk.effects_wait = false;
  open.kiosk.run_waiting();
  CHECK(open.kiosk.notice() == "Saved: refused.");
  CHECK(open.kiosk.model().undo->what == "refused");
}

TEST_CASE("undo appends a retraction; both stay in the log") {
  OpenTub open;
  open.kiosk.does(kiosk::Record{Action::ShedFound});
  CHECK(open.kiosk.log_of(open.tub) == Kinds{"shed found"});
  open.kiosk.does(kiosk::Record{Action::Undo});
  CHECK(open.kiosk.log_of(open.tub).empty());
  CHECK(open.kiosk.log.read_animal(open.kiosk.animal_of(open.tub)).value().size() == 3);
  CHECK_FALSE(open.kiosk.model().undo);
  CHECK_FALSE(shown_animal(open.kiosk.model())->last_moult);
}

TEST_CASE("undo by card works with the screen never touched") {
  OpenTub open;
  open.kiosk.scans_card(Action::Took);
  open.kiosk.scans_card(Action::Undo);
  CHECK(open.kiosk.log_of(open.tub).empty());
  open.kiosk.scans_card(Action::Undo);
  CHECK(open.kiosk.notice().find("nothing to undo") != std::string::npos);
}

TEST_CASE("the undo of one tub is not offered in the next") {
  OpenTub open;
  const Code other = open.kiosk.house(2, "Idiothele nigrofulva");
  open.kiosk.does(kiosk::Record{Action::Took});
  open.kiosk.scans(other);
  open.kiosk.scans_card(Action::Undo);
  CHECK(open.kiosk.log_of(open.tub) == Kinds{"offered"});
}

TEST_CASE("an older entry can be taken back from the records") {
  OpenTub open;
  open.kiosk.does(kiosk::Record{Action::Misted});
  const EventId misted = open.kiosk.model().tub->history->back().id;
  open.kiosk.clock.advance(1min);
  open.kiosk.does(kiosk::Record{Action::Took});
  open.kiosk.does(kiosk::TakeBack{misted});
  CHECK(open.kiosk.log_of(open.tub) == Kinds{"offered"});
}

TEST_CASE("a thumb that bounces records once, a second tap after a moment twice") {
  OpenTub open;
  open.kiosk.does(kiosk::Record{Action::Took});
  open.kiosk.clock.advance(200ms);
  open.kiosk.does(kiosk::Record{Action::Took});
  CHECK(open.kiosk.log_of(open.tub).size() == 1);
  open.kiosk.clock.advance(2s);
  open.kiosk.does(kiosk::Record{Action::Took});
  CHECK(open.kiosk.log_of(open.tub).size() == 2);
}

TEST_CASE("what cannot be written is said, and the next tap works again") {
  OpenTub open;
  open.kiosk.log.fail_next_write({ErrorKind::Full, "Nothing was lost; the card is full.", {}});
  open.kiosk.does(kiosk::Record{Action::Refused});
  CHECK(open.kiosk.notice() == "Nothing was lost; the card is full.");
  CHECK(open.kiosk.model().notice->tone == kiosk::Tone::Problem);
  CHECK(open.kiosk.model().saving.empty());
  CHECK(open.kiosk.log_of(open.tub).empty());
  open.kiosk.does(kiosk::Record{Action::Refused});
  CHECK(open.kiosk.log_of(open.tub) == Kinds{"offered"});
}

TEST_CASE("every record carries who, when and where") {
  OpenTub open;
  open.kiosk.does(kiosk::Record{Action::WaterFilled});
  const Event event = open.kiosk.model().tub->history->back();
  CHECK(event.by == "keeper");
  CHECK(event.when.moment == open.kiosk.clock.now());
  CHECK(event.enclosure == open.tub);
  CHECK(event.number > 0);
}

TEST_CASE("an offer is recorded with the prey that the plan says") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Neoholothele incei");
  kiosk.happened(tub, 30, Offered{Outcome::Took, "roach", 1, Millimetres{12}});
  kiosk.start();
  kiosk.scans(tub);
  const auto planned = prey_offered(kiosk.model());
  REQUIRE(planned);
  CHECK(planned->kind == "roach");
  kiosk.scans_card(Action::Took);
  const auto& written = std::get<Offered>(kiosk.model().tub->history->back().details);
  CHECK(written == Offered{Outcome::Took, planned->kind, planned->count, planned->size});
}

TEST_CASE("where nothing is to be offered, an offer is recorded without prey") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Neoholothele incei");
  kiosk.happened(tub, 1, Moulted{});
  kiosk.start();
  kiosk.scans(tub);
  CHECK_FALSE(prey_offered(kiosk.model()));
  kiosk.does(kiosk::Record{Action::Refused});
  CHECK(std::get<Offered>(kiosk.model().tub->history->back().details) == Offered{Outcome::Refused});
}

// A keeper plans who stands in, ends it early and reads what was done.

#include "core/overview/return_reading.hpp"
#include "kiosk/model/permission.hpp"
#include "kiosk/view/cover_view.hpp"
#include "tests/frame.hpp"
#include "tests/kiosk/model/staffed_kiosk.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

using std::chrono::days;

struct KeeperAway : StaffedKiosk {
  KeeperAway() { proves(); }

  void proves() {
    scans_badge("Ines");
    gives_pin();
  }
  [[nodiscard]] Day day(int from_today) { return clock.now().day() + days{from_today}; }
  void fills_in(const std::string& who, int from, int to) {
    does(Show{ScreenName::Cover});
    does(Show{ScreenName::NewCover});
    does(Ask{AskStandIn{}});
    does(AnswerWith{who});
    does(AskDay{WhichDay::First});
    does(PickDay{day(from)});
    does(AskDay{WhichDay::Last});
    does(PickDay{day(to)});
  }
  void plans(const std::string& who, int from, int to) {
    fills_in(who, from, to);
    does(PlanCover{});
  }
  void passes(int count) { clock.advance(days{count}); }
  [[nodiscard]] std::size_t covers() {
    return static_cast<std::size_t>(std::ranges::count_if(everything(), [](const Event& event) {
      return std::holds_alternative<CoverPlanned>(event.details);
    }));
  }
};

}  // namespace

TEST_CASE("a cover is planned on the kiosk, and what it will need is foreseen at once") {
  KeeperAway kiosk;
  kiosk.plans("Noor", 2, 9);
  CHECK(kiosk.model().screen == ScreenName::Cover);
  CHECK_THAT(kiosk.notice(), Catch::Matchers::StartsWith("Saved: Noor stands in."));
  CHECK(view_cover(kiosk.model()).parts.front().sentences ==
        std::vector<std::string>{"From Wednesday 12 February to Wednesday 19 February."});
  const Event planned = *(kiosk.everything().end() - 2);
  CHECK(planned.details == Details{CoverPlanned{"Noor", kiosk.day(2), kiosk.day(9), {}}});
  CHECK(planned.by == "Ines");
  CHECK(kiosk.everything().back().details ==
        Details{PersonAdded{"Noor", Role::Assistant, kiosk.day(9)}});
  REQUIRE(kiosk.model().cover_page.brief);
  CHECK(kiosk.model().cover_page.brief->supplies.days.size() == 8);
  CHECK(kiosk.model().cover_page.brief->supplies.tubs == 2);
  CHECK(view_cover(kiosk.model()).parts.front().title == "Noor stands in");
  // Nothing of the form is left for the next one.
  CHECK(kiosk.model().new_cover == CoverForm{});
}

TEST_CASE("what it says it will need is what the plan of the cover says") {
  KeeperAway kiosk;
  kiosk.happened(kiosk.tub, 9, Offered{Outcome::Took, "cricket", 2, Millimetres{8}});
  kiosk.happened(kiosk.tub, 16, Offered{Outcome::Took, "cricket", 2, Millimetres{8}});
  kiosk.start();
  kiosk.proves();
  kiosk.plans("Noor", 0, 13);
  const auto read = read_cover_plan(kiosk.log, {"Noor", {}}, kiosk.clock.now()).value();
  const auto needed = supplies_for(read.plan.days, read.overview.collection, read.plan.margin);
  REQUIRE_FALSE(needed.prey.empty());
  CHECK(kiosk.model().cover_page.brief->supplies.prey == needed.prey);
  const auto view = view_cover(kiosk.model());
  CHECK(view.parts.at(1).sentences.at(0) == format_supply(needed.prey.at(0)));
  CHECK(view.parts.at(2).sentences.size() == 14);
}

TEST_CASE("reversed days, days gone by and days that somebody has already are said at once") {
  KeeperAway kiosk;
  kiosk.plans("Noor", 2, 9);
  kiosk.fills_in("Ilse", 12, 20);
  CHECK(kiosk.notice().empty());
  kiosk.does(AskDay{WhichDay::Last});
  kiosk.does(PickDay{kiosk.day(10)});
  CHECK_THAT(kiosk.notice(), Catch::Matchers::Contains("before it begins"));
  kiosk.does(AskDay{WhichDay::First});
  kiosk.does(PickDay{kiosk.day(9)});
  CHECK_THAT(kiosk.notice(), Catch::Matchers::StartsWith("Noor stands in from"));
  kiosk.does(PlanCover{});
  CHECK_THAT(kiosk.notice(), Catch::Matchers::StartsWith("Noor stands in from"));
  CHECK(kiosk.model().screen == ScreenName::NewCover);
  CHECK(kiosk.covers() == 1);
  kiosk.does(AskDay{WhichDay::First});
  kiosk.does(PickDay{kiosk.day(10)});
  kiosk.does(PlanCover{});
  CHECK(kiosk.covers() == 2);
}

TEST_CASE("other racks on the same days are another cover, and both can be looked at") {
  KeeperAway kiosk;
  kiosk.house(7, "Encyocratella olivacea", {"B", "1", "1"});
  kiosk.start();
  kiosk.proves();
  kiosk.fills_in("Noor", 2, 9);
  kiosk.does(ToggleRack{"A"});
  kiosk.does(PlanCover{});
  kiosk.fills_in("Ilse", 2, 9);
  CHECK_FALSE(kiosk.notice().empty());
  kiosk.does(ToggleRack{"B"});
  CHECK(kiosk.notice().empty());
  kiosk.does(PlanCover{});
  REQUIRE(kiosk.covers() == 2);
  CHECK(view_cover(kiosk.model()).parts.front().title == "Ilse stands in");
  CHECK(kiosk.model().cover_page.brief->supplies.tubs == 1);
  CHECK(view_cover(kiosk.model()).more);
  kiosk.does(NextCover{});
  CHECK(view_cover(kiosk.model()).parts.front().title == "Noor stands in");
  CHECK(kiosk.model().cover_page.brief->supplies.tubs == 2);
}

TEST_CASE("a form that is not filled in plans nothing and says what is missing") {
  KeeperAway kiosk;
  kiosk.does(Show{ScreenName::NewCover});
  kiosk.does(PlanCover{});
  CHECK_THAT(kiosk.notice(), Catch::Matchers::StartsWith("Say first who stands in."));
  kiosk.does(Ask{AskStandIn{}});
  kiosk.does(AnswerWith{"   "});
  CHECK(kiosk.model().screen == ScreenName::Words);
  kiosk.does(AnswerWith{"Noor"});
  kiosk.does(PlanCover{});
  CHECK_THAT(kiosk.notice(), Catch::Matchers::StartsWith("Choose the first and the last day."));
  CHECK(kiosk.covers() == 0);
}

TEST_CASE("days before today, or before the first one, cannot be touched") {
  KeeperAway kiosk;
  kiosk.does(AskDay{WhichDay::First});
  for (const DayCell& cell : view_days(kiosk.model()))
    CHECK(cell.open == (cell.day >= kiosk.day(0)));
  kiosk.does(PickDay{kiosk.day(5)});
  kiosk.does(AskDay{WhichDay::Last});
  for (const DayCell& cell : view_days(kiosk.model()))
    CHECK(cell.open == (cell.day >= kiosk.day(5)));
  const auto cells = view_days(kiosk.model());
  CHECK(std::chrono::weekday{cells.front().day} == std::chrono::Monday);
  CHECK(cells.size() % days_a_week == 0);
}

TEST_CASE("a cover is ended in two touches; the badge opens nothing from the next day on") {
  KeeperAway kiosk;
  kiosk.plans("Noor", 0, 9);
  kiosk.passes(3);
  kiosk.scans_badge("Noor");
  CHECK(kiosk.model().by == "Noor");
  kiosk.proves();
  kiosk.does(Show{ScreenName::Cover});
  const auto before = kiosk.everything().size();
  kiosk.does(EndCover{});
  CHECK(kiosk.everything().size() == before);
  CHECK_THAT(kiosk.notice(), Catch::Matchers::StartsWith("Touch again to end it"));
  kiosk.does(EndCover{});
  CHECK(kiosk.everything().size() == before + 2);
  CHECK_THAT(kiosk.notice(), Catch::Matchers::StartsWith("Saved: Noor stands in until today"));
  kiosk.scans_badge("Noor");
  CHECK(kiosk.model().by == "Noor");
  kiosk.passes(1);
  kiosk.scans_badge("Noor");
  CHECK(kiosk.model().by != "Noor");
  CHECK_THAT(kiosk.notice(), Catch::Matchers::Contains("last day here was"));
}

TEST_CASE("a cover that is called off before it began leaves no badge that opens anything") {
  KeeperAway kiosk;
  kiosk.plans("Noor", 5, 9);
  kiosk.does(EndCover{});
  CHECK_THAT(kiosk.notice(), Catch::Matchers::StartsWith("Touch again to call it off"));
  kiosk.does(EndCover{});
  CHECK(kiosk.everything().back().details == Details{PersonEnded{"Noor"}});
  for (const int more : {0, 5, 1}) {
    kiosk.passes(more);
    kiosk.scans_badge("Noor");
    CHECK_THAT(kiosk.notice(), Catch::Matchers::Contains("access was ended"));
  }
}

TEST_CASE("one touch that was not meant ends nothing, wherever one goes in between") {
  KeeperAway kiosk;
  kiosk.plans("Noor", 0, 9);
  kiosk.does(EndCover{});
  kiosk.does(Show{ScreenName::Round});
  kiosk.does(Show{ScreenName::Cover});
  kiosk.does(EndCover{});
  CHECK_THAT(kiosk.notice(), Catch::Matchers::StartsWith("Touch again"));
}

TEST_CASE("whoever is at the kiosk when their cover ends at midnight is asked who is there") {
  StaffedKiosk kiosk;
  kiosk.clock.advance(std::chrono::hours{2} + std::chrono::minutes{50});  // to 23:50
  const Day today = kiosk.clock.now().day();
  kiosk.sets(CoverPlanned{"Oskar", today, today, {}});
  kiosk.start();
  kiosk.scans_badge("Oskar");
  kiosk.scans(kiosk.tub);
  CHECK(standing_of(kiosk.model()) == Standing::Assistant);
  kiosk.clock.advance(std::chrono::minutes{11});
  REQUIRE(kiosk.clock.now().day() == today + days{1});
  kiosk.does(Record{Action::Misted});
  CHECK(kiosk.model().screen == ScreenName::Who);
  kiosk.scans_badge("Oskar");
  CHECK_THAT(kiosk.notice(), Catch::Matchers::StartsWith("Your cover ended on"));
  CHECK(kiosk.log_of(kiosk.tub) == std::vector<std::string>{"misted"});
}

TEST_CASE("who stands in is known before everything is read") {
  StaffedKiosk kiosk;
  const Day today = kiosk.clock.now().day();
  kiosk.sets(CoverPlanned{"Oskar", today + days{2}, today + days{5}, {}});
  kiosk.effects_wait = true;
  kiosk.start();
  kiosk.does(RosterLoaded{read_roster(kiosk.log)});
  REQUIRE(kiosk.model().cover.covers.size() == 1);
  kiosk.scans_badge("Oskar");
  CHECK_THAT(kiosk.notice(), Catch::Matchers::StartsWith("Your cover begins on"));
}

TEST_CASE("a cover that was planned at a desk opens the kiosk without its being started anew") {
  StaffedKiosk kiosk;
  const Day today = kiosk.clock.now().day();
  kiosk.sets(CoverPlanned{"Noor", today, today + days{5}, {}});
  kiosk.sets(PersonAdded{"Noor", Role::Assistant, today + days{5}});
  kiosk.scans_badge("Noor");
  CHECK(kiosk.model().by == "Noor");
  CHECK_FALSE(kiosk.model().cover.covers.empty());
  kiosk.scans_badge("Nobody");
  CHECK_THAT(kiosk.notice(), Catch::Matchers::Contains("belongs to nobody here"));
}

TEST_CASE("the report tells what was done, what was flagged, and what was eaten") {
  KeeperAway kiosk;
  kiosk.plans("Oskar", 0, 9);
  kiosk.scans_badge("Oskar");
  kiosk.scans(kiosk.other_tub);
  kiosk.does(Ask{AskWrong{kiosk.other_tub}});
  kiosk.does(AnswerWith{"The lid is cracked."});
  kiosk.scans(kiosk.tub);
  kiosk.does(Record{Action::Took});
  kiosk.passes(3);
  kiosk.proves();
  kiosk.does(Show{ScreenName::Cover});
  kiosk.does(Show{ScreenName::Returned});
  REQUIRE(kiosk.model().return_page.report);
  const auto read = read_return(kiosk.log, {"Oskar", {}}, kiosk.clock.now()).value();
  CHECK(*kiosk.model().return_page.report == read.report);
  const auto view = view_return(kiosk.model());
  CHECK(view.parts.at(0).title == "Oskar stands in");
  for (const std::string& sentence : return_summary(read.report))
    CHECK_THAT(view.parts.at(0).sentences, Catch::Matchers::VectorContains(sentence));
  // What was flagged comes first, and leads to its tub.
  CHECK_THAT(view.parts.at(1).sentences.at(0), Catch::Matchers::Contains("The lid is cracked."));
  CHECK(view.parts.at(1).touch == Intent{OpenTub{kiosk.other_tub}});
}

TEST_CASE("the sheet and the report are printed once, however often they are asked for") {
  KeeperAway kiosk;
  kiosk.plans("Noor", 0, 9);
  const EventId cover = *kiosk.model().cover_page.shown;
  kiosk.effects_wait = true;
  kiosk.does(PrintCover{});
  kiosk.does(PrintCover{});
  CHECK(view_cover(kiosk.model()).printing);
  kiosk.effects_wait = false;
  kiosk.run_waiting();
  CHECK(kiosk.sheets_wanted == std::vector{cover});
  CHECK_FALSE(view_cover(kiosk.model()).printing);
  CHECK(kiosk.notice() == "The sheet for Oskar, 9 pages: handover.pdf.");
  kiosk.does(Show{ScreenName::Returned});
  kiosk.does(PrintCover{});
  CHECK(kiosk.sheets_wanted == std::vector{cover, cover});
}

TEST_CASE("a badge is printed from the page of its person") {
  KeeperAway kiosk;
  kiosk.does(Show{ScreenName::People});
  kiosk.does(OpenPerson{"Oskar"});
  kiosk.does(PrintBadge{});
  CHECK(kiosk.badges_wanted == std::vector<std::string>{"Oskar"});
  CHECK(kiosk.notice() == "1 label on 1 page: labels.pdf.");
}

#include "core/cover/return_report.hpp"

#include <nlohmann/json.hpp>

#include "core/cover/days.hpp"
#include "core/words/dates.hpp"
#include "tests/core/cover/away_room.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

// A cover of the last ten days; the morning comes before anything that is recorded on a day.
struct TenDays {
  AwayRoom room;
  std::vector<Moment> days;

  TenDays() {
    const Moment now = AwayRoom::now();
    const Day first = now.day() - std::chrono::days{9};
    days = days_until({Instant{first} - now.offset, now.offset}, now.day());
    room.tub(1, {"A", "1", "1"});
  }
  [[nodiscard]] TubReturn tub() const {
    TubPast past;
    past.rules = default_rules();
    for (const Event& event : standing(room.log))
      if (event.animal) past.events.push_back(event);
    return follow_tub(past, days, AwayRoom::now()).value();
  }
  [[nodiscard]] static Day ago(int n) { return AwayRoom::day(-n); }
};

bool has(const TubReturn& tub, const DutyRecord& duty) {
  return std::ranges::find(tub.duties, duty) != tub.duties.end();
}

}  // namespace

TEST_CASE("a meal given on its day is done, one given later is late, one never given is not done") {
  TenDays on_time;
  on_time.room.happened(16, 1, Offered{}).happened(9, 1, Offered{});
  CHECK(has(on_time.tub(), {Task::Offer, TenDays::ago(9), Fate::Done, TenDays::ago(9)}));
  TenDays late;
  late.room.happened(16, 1, Offered{}).happened(6, 1, Offered{});
  CHECK(has(late.tub(), {Task::Offer, TenDays::ago(9), Fate::Done, TenDays::ago(6)}));
  TenDays never;
  never.room.happened(16, 1, Offered{});
  CHECK(has(never.tub(), {Task::Offer, TenDays::ago(9), Fate::NotDone, TenDays::ago(9)}));
  CHECK(never.tub().count(Fate::NotDone) == 1);
}

TEST_CASE("a meal that must not be given any more is not held against anybody") {
  TenDays away;
  away.room.happened(16, 1, Offered{}).happened(7, 1, Looked{{Sign::DarkAbdomen}});
  // Seeing the sign answers the visit; what matters is that no meal is missed after it.
  CHECK(has(away.tub(), {Task::Offer, TenDays::ago(9), Fate::Done, TenDays::ago(7)}));
  TenDays moved;
  moved.room.happened(16, 1, Offered{}).happened(7, 1, Rehoused{tub_number(1)});
  CHECK(has(moved.tub(), {Task::Offer, TenDays::ago(9), Fate::FellAway, TenDays::ago(6)}));
}

TEST_CASE("food where none was to be is told") {
  TenDays away;
  away.room.happened(12, 1, ShedFound{}).happened(9, 1, Offered{.outcome = Outcome::Refused});
  CHECK(away.tub().fed_against.empty());  // a shed to take out; no word against food yet
  TenDays fresh;
  fresh.room.happened(9, 1, ShedFound{}).happened(8, 1, Offered{.outcome = Outcome::Refused});
  CHECK(fresh.tub().fed_against == std::vector<Day>{TenDays::ago(8)});
  CHECK(fresh.tub().moulted == TenDays::ago(9));
  CHECK(fresh.tub().refused == 1);
}

TEST_CASE("an animal that died is told, and nothing is due after it") {
  TenDays away;
  away.room.happened(16, 1, Offered{}).happened(9, 1, Died{});
  CHECK(away.tub().died == TenDays::ago(9));
  CHECK(away.tub().count(Fate::NotDone) == 0);
}

TEST_CASE("the report says it in sentences and for other programs") {
  TenDays away;
  away.room.happened(16, 1, Offered{}).happened(6, 1, Offered{.prey = "cricket", .count = 2});
  away.room.add(5, 1, Flagged{"a.png"}).note = "hangs on the lid";
  const Cover cover = AwayRoom::cover(-9, 0);
  TubReturn tub = away.tub();
  tub.place = {"A", "1", "1"};
  const ReturnReport report =
      report_return(cover, {tub}, away.days, {TenDays::ago(6), TenDays::ago(5)});
  const std::string text = return_as_text(report);
  CHECK(text.find("Flagged on " + weekday_words(TenDays::ago(5)) +
                  ": Hangs on the lid. Picture: a.png") != std::string::npos);
  CHECK(text.find("done " + weekday_words(TenDays::ago(6)) + ", 3 days late.") !=
        std::string::npos);
  CHECK(text.find("Eaten: 2 crickets.") != std::string::npos);
  const auto json = nlohmann::json::parse(return_as_json(report, away.room.collection()));
  CHECK(json["silent_days"].size() == 8);
  CHECK(json["tubs"][0]["flags"][0]["picture"] == "a.png");
  CHECK(json["late"] == 1);
}

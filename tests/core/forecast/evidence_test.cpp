#include "core/forecast/evidence.hpp"

#include "tests/core/forecast/invented_collection.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

const Instant later = at_hour(24 * 3000).moment.utc;

// Events of one animal that came on day 10, each on its day.
class Log {
 public:
  Log() {
    add(10, AnimalAdded{.key = "oo-1",
                        .species = "Encyocratella olivacea",
                        .stage = Stage::Juvenile,
                        .acquired = at_hour(240).moment.day()});
  }
  Log& add(double day, Details details) {
    events_.push_back(make_event(order_++, 24 * day + 12, animal_number(1), std::move(details)));
    return *this;
  }
  [[nodiscard]] Evidence gather(Instant until = later) const {
    return *gather_evidence(events_, until);
  }

 private:
  std::vector<Event> events_;
  std::int64_t order_ = 1;
};

void check_ignored(const Log& log, const std::string& why) {
  const Evidence evidence = log.gather();
  REQUIRE(evidence.ignored.size() == 1);
  INFO(evidence.ignored[0]);
  CHECK(evidence.ignored[0].find(why) != std::string::npos);
}

}  // namespace

TEST_CASE("a shed found lies between the last visit and the day it was found") {
  const Evidence evidence =
      Log().add(20, Looked{}).add(26, Looked{}).add(33, ShedFound{}).add(33, Looked{}).gather();
  REQUIRE(evidence.moults.size() == 1);
  CHECK(evidence.moults[0].latest - evidence.moults[0].earliest == Approx(7));
  CHECK(evidence.ignored.empty());
}

TEST_CASE("offers are the visits of a keeper who writes down no looks") {
  Log log;
  for (int day = 12; day < 60; day += 6) log.add(day, Offered{Outcome::Refused, "", {}, {}});
  const Evidence evidence = log.add(60, ShedFound{}).gather();
  CHECK(evidence.moults[0].width() == Approx(6));
}

TEST_CASE("records that contradict others are left aside and named") {
  check_ignored(Log().add(40, Moulted{}).add(40, Moulted{}), "taken for the same one");
  check_ignored(Log().add(40, Moulted{}).add(45, ShedFound{}), "taken for the same one");
  check_ignored(Log().add(5, ShedFound{}), "had not come here yet");
  check_ignored(Log().add(50, Died{}).add(52, Offered{}), "had died or left");
  check_ignored(Log().add(50, TemperatureRead{Celsius{240}, ""}), "no temperature of a room");
}

TEST_CASE("prey left overnight and taken out again was refused") {
  const Evidence evidence = Log()
                                .add(20, Offered{Outcome::LeftOvernight, "", {}, {}})
                                .add(21, PreyRemoved{})
                                .add(27, Offered{Outcome::LeftOvernight, "", {}, {}})
                                .gather();
  REQUIRE(evidence.observations.size() == 2);
  CHECK(evidence.observations[0].outcome == Outcome::Refused);
  CHECK(evidence.observations[1].outcome == Outcome::LeftOvernight);
}

TEST_CASE("signs tapped one by one in one visit are one look") {
  Log log;
  log.add(20, Looked{{Sign::DarkAbdomen}}).add(20.01, Looked{{Sign::SealedIn}});
  const Evidence evidence = log.gather();
  REQUIRE(evidence.observations.size() == 1);
  CHECK(evidence.observations[0].signs == SignSet{Sign::DarkAbdomen, Sign::SealedIn});
}

TEST_CASE("nothing after the day changes the evidence") {
  rc::prop("evidence as of a day does not see later events", [] {
    auto log = *any_log(50);
    const Instant until = at_hour(*rc::gen::inRange(0, 200)).moment.utc;
    for (Event& event : log) event.animal = animal_number(1);
    std::vector<Event> before;
    for (const Event& event : log)
      if (event.when.moment.utc <= until) before.push_back(event);
    RC_ASSERT(gather_evidence(log, until) == gather_evidence(before, until));
  });
}

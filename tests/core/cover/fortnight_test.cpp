// A whole fortnight with an assistant who skips days, opens wrong tubs, taps wrong tiles and undoes
// it, in the invented room whose truth the test knows.

#include <algorithm>
#include <random>
#include <set>

#include "core/cover/days.hpp"
#include "core/overview/return_reading.hpp"
#include "tests/demo/collection/keepers.hpp"
#include "tests/fakes/memory_log_store.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

using std::chrono::days;

constexpr int tubs = 14;
constexpr int before = 30;  // days of the keeper's visits, after the records

// Two logs: one with all the assistant's mistakes, one as if they had never happened.
class Fortnight {
 public:
  explicit Fortnight(unsigned seed) : world_(tubs, seed), random_(seed) {
    world_.live(before, calendar_keeper);
    for (const auto& [id, life] : world_.truth()) animals_.push_back(id);
    first_ = Day{std::chrono::year{2031} / 1 / 1} + days{before};
    for (MemoryLogStore* log : {&messy, &clean}) {
      REQUIRE(log->merge(world_.log()));
      write(*log, {}, CoverPlanned{"Noor", first_, first_ + days{13}, {}},
            world_.morning(first_ - days{1}));
    }
    for (int i = 0; i < 14; ++i) live(first_ + days{i});
  }

  MemoryLogStore messy{kiosk_number(7)};
  MemoryLogStore clean{kiosk_number(7)};
  std::set<Day> skipped, recorded;
  int took = 0, refused = 0, mistakes = 0;
  std::optional<Day> flagged_on;

  [[nodiscard]] std::vector<Event> history() const { return world_.log(); }
  [[nodiscard]] std::size_t animals() const { return animals_.size(); }
  [[nodiscard]] Day first() const { return first_; }
  [[nodiscard]] ReturnReport report(MemoryLogStore& log) const {
    return read_return(log, {"Noor", {}}, world_.morning(first_ + days{14})).value().report;
  }

 private:
  EventId write(MemoryLogStore& log, std::optional<AnimalId> animal, Details details,
                const Moment& when, std::string note = {}) {
    Draft draft;
    draft.id = event_number(2'000'000 + next_++);
    draft.by = "Noor";
    draft.when = When{when, Precision::Exact};
    draft.animal = animal;
    draft.details = std::move(details);
    draft.note = std::move(note);
    REQUIRE(log.append({draft}, when.utc));
    return draft.id;
  }

  bool chance(double p) { return std::bernoulli_distribution(p)(random_); }
  Moment now(Day day) {
    Moment moment = world_.morning(day);
    moment.utc += std::chrono::minutes{++minute_};
    return moment;
  }

  void record(Day day, const AnimalId& animal, const Details& details, std::string note = {}) {
    recorded.insert(day);
    if (chance(0.15)) mistake(day, animal);
    const Moment moment = now(day);
    write(messy, animal, details, moment, note);
    write(clean, animal, details, moment, note);
  }
  // The wrong tub, or the wrong tile at the right one; then undo.
  void mistake(Day day, const AnimalId& animal) {
    const AnimalId other =
        animals_[std::uniform_int_distribution<std::size_t>(0, animals_.size() - 1)(random_)];
    const bool wrong_tub = chance(0.5);
    const Details slip = chance(0.3)   ? Details{Died{}}
                         : chance(0.5) ? Details{ShedFound{}}
                                       : Details{Offered{}};
    const EventId id = write(messy, wrong_tub ? other : animal, slip, now(day));
    write(messy, wrong_tub ? other : animal, Retracted{id}, now(day));
    ++mistakes;
  }

  void live(Day day) {
    minute_ = 0;
    if (day != first_ && chance(0.3)) {
      skipped.insert(day);
      return;
    }
    rackside::Forecaster forecaster;
    const Overview overview =
        read_overview(messy, forecaster, world_.morning(day), Until::Everything).value();
    const DayPlan plan = plan_day(overview.collection, overview.forecasts, overview.rules,
                                  overview.climate, world_.morning(day));
    if (!flagged_on) {
      record(day, animals_.front(), Flagged{"noor-1.png"}, "hangs on the lid");
      flagged_on = day;
    }
    for (const TubTask& tub : plan.due) visit(day, tub);
  }

  void visit(Day day, const TubTask& tub) {
    if (tub.instruction.prey) {
      const bool takes = chance(0.8);
      ++(takes ? took : refused);
      record(day, tub.animal, Offered{takes ? Outcome::Took : Outcome::Refused, "cricket", 1});
    } else if (tub.instruction.task == Task::LookForShed) {
      record(day, tub.animal, Looked{});
    } else if (tub.instruction.task == Task::TakeOutShed) {
      record(day, tub.animal, ShedRemoved{});
    }
  }

  YearWorld world_;
  std::vector<AnimalId> animals_;  // the living
  std::mt19937 random_;
  Day first_;
  int minute_ = 0;
  std::int64_t next_ = 0;
};

std::vector<Event> all_of(MemoryLogStore& log) {
  std::vector<Event> events;
  REQUIRE(log.read_all([&](Event&& event) { events.push_back(std::move(event)); }));
  return events;
}

}  // namespace

TEST_CASE("a fortnight of mistakes that were undone reports as if they had not happened") {
  for (const unsigned seed : {3u, 4u}) {
    Fortnight fortnight(seed);
    REQUIRE(fortnight.mistakes > 5);
    REQUIRE_FALSE(fortnight.skipped.empty());
    CHECK(fortnight.report(fortnight.messy).tubs == fortnight.report(fortnight.clean).tubs);
    CHECK(fortnight.report(fortnight.messy).prey == fortnight.report(fortnight.clean).prey);
  }
}

TEST_CASE("nothing an assistant does removes or hides an event") {
  Fortnight fortnight(5);
  const auto now = all_of(fortnight.messy);
  const auto history = fortnight.history();
  for (const Event& event : history) CHECK(std::ranges::count(now, event.id, &Event::id) == 1);
  const auto standing_now = standing(now);
  // What stood before stands: the assistant only took back what was the assistant's own.
  for (const Event& event : standing(history))
    CHECK(std::ranges::count(standing_now, event.id, &Event::id) == 1);
}

TEST_CASE("the report counts what was done, what was skipped and what was flagged") {
  Fortnight fortnight(6);
  const ReturnReport report = fortnight.report(fortnight.messy);
  CHECK(report.cover.who == "Noor");
  for (int i = 0; i < 14; ++i) {
    const Day day = fortnight.first() + days{i};
    CHECK(fortnight.recorded.contains(day) != (std::ranges::count(report.silent_days, day) == 1));
    if (fortnight.skipped.contains(day)) CHECK_FALSE(fortnight.recorded.contains(day));
  }
  int took = 0, refused = 0, flags = 0, eaten = 0;
  for (const TubReturn& tub : report.tubs) {
    took += tub.took;
    refused += tub.refused;
    for (const FlagRecord& flag : tub.flags) {
      ++flags;
      CHECK(flag.words == "hangs on the lid");
      CHECK(flag.picture == "noor-1.png");
      CHECK(flag.day == fortnight.flagged_on);
    }
    CHECK_FALSE(tub.died);
    CHECK_FALSE(tub.then.empty());
  }
  for (const PreyUsed& prey : report.prey) eaten += prey.count;
  CHECK(took == fortnight.took);
  CHECK(eaten == fortnight.took);
  CHECK(refused == fortnight.refused);
  CHECK(flags == 1);
  CHECK(report.tubs.size() == fortnight.animals());
  // Meals that fell due on a skipped day were given later.
  CHECK(report.late() > 0);
}

TEST_CASE("the same log gives the same report, and a cover that was not planned none") {
  Fortnight fortnight(7);
  CHECK(fortnight.report(fortnight.messy) == fortnight.report(fortnight.messy));
  const auto none = read_return(fortnight.messy, {"Ilse", {}}, Moment{});
  REQUIRE_FALSE(none);
  CHECK(none.error().kind == ErrorKind::NotFound);
}

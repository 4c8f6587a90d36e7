#include "core/cover/cover_plan.hpp"

#include <algorithm>
#include <set>

#include "core/words/dates.hpp"
#include "tests/core/cover/away_room.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

// What the sheet takes to be done, as the assistant would record it.
std::vector<Details> recorded_for(const AnimalState& animal, const Instruction& said) {
  std::vector<Details> done;
  std::vector<Task> tasks = said.also;
  if (said.urgency == Urgency::Due) tasks.insert(tasks.begin(), said.task);
  for (const Task task : tasks) {
    if (task == Task::Offer || task == Task::OfferOneSmall)
      done.emplace_back(Offered{Outcome::Took, said.prey->kind, said.prey->count, said.prey->size});
    if (task == Task::TakeOutPrey) done.emplace_back(PreyRemoved{});
    if (task == Task::TakeOutShed) done.emplace_back(ShedRemoved{});
    if (task == Task::MistAndCheckWater) done.emplace_back(Misted{});
    if (task == Task::LookForShed || task == Task::LookCloser)
      done.emplace_back(Looked{animal.signs});
  }
  return done;
}

// Six animals, each at another point of its cycle.
AwayRoom room_of_six() {
  AwayRoom room;
  for (int i = 0; i < 6; ++i) room.tub(i, {i < 3 ? "A" : "B", "1", std::to_string(i)});
  room.happened(9, 0, Offered{}).happened(3, 0, WaterFilled{});
  room.happened(2, 1, ShedFound{}).happened(8, 1, Misted{});
  room.happened(1, 2, Offered{.outcome = Outcome::LeftOvernight});
  room.happened(5, 3, Offered{.outcome = Outcome::Refused});
  room.happened(4, 4, Looked{{Sign::DarkAbdomen}});
  room.happened(12, 5, EggSac{});
  return room;
}

Task task_of(const DayPlan& plan, AnimalId animal) {
  for (const auto* list : {&plan.due, &plan.wait, &plan.leave_alone})
    for (const TubTask& tub : *list)
      if (tub.animal == animal) return tub.instruction.task;
  return Task::NotDue;
}

}  // namespace

TEST_CASE("where everything goes as assumed, the plan says what the round will say each day") {
  AwayRoom room = room_of_six();
  const CoverPlan plan = room.planned(AwayRoom::cover(0, 16));
  REQUIRE(plan.days.size() == 17);
  int told = 0;
  for (std::size_t day = 0; day < plan.days.size(); ++day) {
    const Collection there = room.collection();
    const DayPlan round = plan_day(there, {}, room.rules, room.climate, room.outlook.days[day], {});
    for (int i = 0; i < 6; ++i) {
      const CoverLine* line = line_about(plan.days[day], i);
      REQUIRE(line);
      INFO("animal " << i << " on day " << day);
      CHECK(task_name(line->task) == task_name(task_of(round, animal_number(i))));
    }
    for (const auto* list : {&round.due, &round.wait, &round.leave_alone})
      for (const TubTask& tub : *list)
        for (Details& details : recorded_for(*there.animal(tub.animal), tub.instruction)) {
          Event& event = room.add(0, 0, std::move(details));
          event.animal = tub.animal;
          event.when.moment = room.outlook.days[day];
          ++told;
        }
  }
  CHECK(told > 15);
}

TEST_CASE("the first day is what the round says now, forecasts and all") {
  AwayRoom room = room_of_six();
  room.believed_ahead(0, [](double) { return 0.9; });
  const CoverPlan plan = room.planned(AwayRoom::cover(0, 3));
  for (int i = 0; i < 6; ++i)
    CHECK(line_about(plan.days[0], i)->task == task_of(room.plan(), animal_number(i)));
  CHECK(line_about(plan.days[0], 0)->task == Task::LookForShed);
}

TEST_CASE("a meal that is due stands down on the days on which premoult is likely") {
  AwayRoom room;
  room.tub(1, {"A", "1", "1"}).happened(6, 1, Offered{});
  room.believed_ahead(1, [](double day) { return day < 5 ? 0.1 : 0.8; });
  const CoverPlan plan = room.planned(AwayRoom::cover(0, 14));
  CHECK(line_about(plan.days[1], 1)->task == Task::Offer);
  for (std::size_t day = 5; day < plan.days.size(); ++day)
    CHECK_FALSE(line_about(plan.days[day], 1)->prey);
}

TEST_CASE("an animal on its back is left, then spared, and that it has moulted is said") {
  AwayRoom room;
  room.tub(1, {"A", "1", "1"}).happened(0.1, 1, Looked{{Sign::OnItsBack}});
  const CoverPlan plan = room.planned(AwayRoom::cover(0, 9));
  CHECK(line_about(plan.days[0], 1)->words == "Leave it entirely alone.");
  CHECK(line_about(plan.days[0], 1)->duty == Duty::KeepClosed);
  const CoverLine& meal = *line_about(plan.days[7], 1);
  CHECK(meal.task == Task::OfferOneSmall);
  CHECK(meal.only.starts_with("if its moult of "));
  for (std::size_t day = 1; day < 7; ++day) CHECK_FALSE(line_about(plan.days[day], 1)->prey);
}

TEST_CASE("a second meal says that it depends on the first, and what follows a refusal") {
  AwayRoom room;
  room.tub(1, {"A", "1", "1"}).happened(7, 1, Offered{});
  const CoverPlan plan = room.planned(AwayRoom::cover(0, 14));
  const CoverLine& first = *line_about(plan.days[0], 1);
  CHECK(first.only.empty());
  CHECK(first.otherwise == "If it refuses: again on " + weekday_words(AwayRoom::day(4)));
  const CoverLine& second = *line_about(plan.days[7], 1);
  CHECK(second.task == Task::Offer);
  CHECK(second.only == "if it eats on " + weekday_words(AwayRoom::day(0)));
}

TEST_CASE("what only a keeper should do is not asked of a stand-in") {
  AwayRoom room;
  room.tub(1, {"A", "1", "1"}).happened(1, 1, Offered{});
  room.happened(12, 1, ShedFound{}).happened(1, 1, ShedRemoved{});
  const CoverPlan plan = room.planned(AwayRoom::cover(0, 3));
  const CoverLine& line = *line_about(plan.days[0], 1);
  REQUIRE(line.task == Task::MeasureFromShed);
  CHECK(line.duty == Duty::Nothing);
  CHECK(line.words == "Nothing today.");
}

TEST_CASE("only the racks of the cover are told, and days before it are not") {
  const AwayRoom room = room_of_six();
  const CoverPlan plan = room.planned(AwayRoom::cover(4, 6, {"B"}));
  REQUIRE(plan.days.size() == 3);
  CHECK(plan.days[0].day == AwayRoom::day(4));
  CHECK(racks_of(plan) == std::vector<std::string>{"B"});
  CHECK(line_about(plan.days[0], 3) != nullptr);
  CHECK(line_about(plan.days[0], 0) == nullptr);
}

TEST_CASE("notes and dangers stand with the tubs they are about") {
  AwayRoom room = room_of_six();
  room.tub(7, {"A", "2", "1"}, {.species = "Omothymus violaceopes", .stage = Stage::Adult});
  room.book.notes = {{event_number(1), tub_number(2), "", "Lid is loose."},
                     {event_number(2), std::nullopt, "B", "Lamp stays on."},
                     {event_number(3), std::nullopt, "C", "Of another rack."}};
  const CoverPlan plan = room.planned(AwayRoom::cover(0, 1, {"A", "B"}));
  REQUIRE(plan.tub_notes.size() == 1);
  CHECK(plan.tub_notes[0].animal == animal_number(2));
  REQUIRE(plan.notes.size() == 1);
  CHECK(plan.notes[0].words == "Lamp stays on.");
  CHECK(std::ranges::any_of(plan.dangers, [](const Danger& danger) {
    return danger.species == std::vector<std::string>{"Omothymus violaceopes"} &&
           danger.sentence.find("medical importance") != std::string::npos;
  }));
}

TEST_CASE(
    "every living animal stands once in every day, and is never offered food while it is "
    "likely to be soft") {
  rc::prop("any log, any belief", [] {
    AwayRoom room;
    room.log = *any_log(80);
    // The random log is older than the room's today.
    for (int i = 0; i < 4; ++i) {
      const double height = *rc::gen::inRange(0, 100) / 100.0;
      const double slope = *rc::gen::inRange(-5, 6) / 100.0;
      room.believed_ahead(i,
                          [&](double day) { return std::clamp(height + slope * day, 0.0, 1.0); });
    }
    const CoverPlan plan = room.planned(AwayRoom::cover(0, 14));
    const Collection there = room.collection();
    for (const CoverDay& day : plan.days) {
      std::multiset<AnimalId> told;
      for (const auto* list : {&day.visits, &day.keep_closed, &day.nothing})
        for (const CoverLine& line : *list) told.insert(line.animal);
      for (const auto& [id, animal] : there.animals)
        RC_ASSERT(told.count(id) == (animal.life == Life::Living ? 1u : 0u));
      for (const CoverLine& line : day.visits) {
        const auto index = static_cast<std::size_t>((day.day - AwayRoom::day(0)).count());
        const Forecast& belief = room.outlook.forecasts.at(line.animal)[index];
        const CareRules rules = room.rules.rules_for(*there.animal(line.animal));
        if (line.prey) RC_ASSERT(belief.p_premoult + belief.p_hardening <= rules.withhold_above);
      }
    }
    RC_ASSERT(room.planned(AwayRoom::cover(0, 14)) == plan);
  });
}

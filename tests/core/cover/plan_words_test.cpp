// The plan for people and for other programs: the same facts.

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

#include "core/care/cautions.hpp"
#include "core/cover/supplies.hpp"
#include "core/round/round.hpp"
#include "core/words/dates.hpp"
#include "tests/core/cover/away_room.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

AwayRoom room() {
  AwayRoom away;
  away.tub(1, {"A", "1", "1"}).happened(9, 1, Offered{});
  away.tub(2, {"A", "1", "2"}).happened(0.1, 2, Looked{{Sign::OnItsBack}});
  away.tub(3, {"B", "1", "1"}).happened(1, 3, Offered{});
  away.book.contacts = {{ContactKind::Keeper, "Wiebke", "0170 1", ""},
                        {ContactKind::Vet, "Abeba", "0170 2", "Only by day."}};
  away.book.notes = {{event_number(1), tub_number(1), "", "She bites the forceps."}};
  return away;
}

bool has(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("the plan is printed with whom to call, what to beware of and every day") {
  const AwayRoom away = room();
  const CoverPlan plan = away.planned(AwayRoom::cover(0, 2));
  const std::string text = cover_as_text(plan, away.collection());
  CHECK(has(text, "Noor stands in from "));
  CHECK(has(text, "Wiebke: 0170 1\n     Whenever you are not sure."));
  CHECK(has(text, "Abeba: 0170 2\n     Only by day."));
  CHECK(has(text, "She bites the forceps."));
  CHECK(has(text, "Offer 1 cricket of about 10 mm, no more."));
  CHECK(has(text, "Then tap one of: took, refused, left overnight, shed found."));
  CHECK(has(text, "Rack A: do not open"));
  CHECK(has(text, "Leave it entirely alone."));
  for (const std::string& caution : general_cautions()) CHECK(has(text, caution));
  for (const CoverDay& day : plan.days) CHECK(has(text, "\n" + long_day_words(day.day) + "\n"));
}

TEST_CASE("the plan for other programs holds every animal of every day once") {
  const AwayRoom away = room();
  const auto plan =
      nlohmann::json::parse(cover_as_json(away.planned(AwayRoom::cover(0, 2)), away.collection()));
  REQUIRE(plan["days"].size() == 3);
  for (const auto& day : plan["days"])
    CHECK(day["do"].size() + day["keep_closed"].size() + day["nothing"].size() == 3);
  CHECK(plan["days"][0]["do"][0]["task"] == "offer");
  CHECK(plan["days"][0]["do"][0]["prey"]["count"] == 1);
  CHECK(plan["days"][0]["keep_closed"][0]["enclosure"] == tub_number(2).text());
  CHECK(plan["contacts"].size() == 2);
  CHECK(plan["supplies"]["prey"][0]["get"] == 1);
}

TEST_CASE("a stand-in has two to four things to tap, one of which answers what was asked") {
  for (int number = 0; number <= static_cast<int>(Task::LeaveAlone); ++number) {
    const Task task = static_cast<Task>(number);
    const auto taps = assistant_actions({.task = task, .urgency = Urgency::Due});
    INFO(task_name(task));
    CHECK((taps.size() >= 2 && taps.size() <= 4));
    CHECK(std::ranges::count(taps, Action::Died) == 0);
    CHECK(std::set<Action>(taps.begin(), taps.end()).size() == taps.size());
    // A shed is measured by its keeper.
    if (task == Task::MeasureFromShed) continue;
    CHECK(std::ranges::any_of(taps, [&](Action tap) { return answers(*details_of(tap), task); }));
  }
}

TEST_CASE("a stand-in is never given a keeper's task, and every task has its words") {
  for (int number = 0; number <= static_cast<int>(Task::LeaveAlone); ++number) {
    Instruction said{.task = static_cast<Task>(number), .urgency = Urgency::Due};
    said.prey = PreyPlan{"cricket", 2, Millimetres{8}, 0};
    INFO(task_name(said.task));
    CHECK_FALSE(assistant_sentence(said).empty());
    CHECK_FALSE(has(assistant_sentence(said), "easure"));
    said.also = {Task::MeasureFromShed};
    CHECK(assistant_extras(said).empty());
  }
}

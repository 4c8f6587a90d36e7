// `rackside-log cover`, `supplies` and `returned`, run as a keeper would.

#include <ctime>
#include <nlohmann/json.hpp>

#include "core/collection/collection.hpp"
#include "core/people/people.hpp"
#include "core/store/sqlite_log.hpp"
#include "core/values/time.hpp"
#include "tests/core/program/kept_log.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

// Days are counted from the day of the test: what is over cannot be planned.
std::string in_days(int count) {
  const std::time_t now = std::time(nullptr);
  std::tm local{};
  localtime_r(&now, &local);
  const Day today = std::chrono::year{local.tm_year + 1900} / (local.tm_mon + 1) / local.tm_mday;
  return format_day(today + std::chrono::days{count});
}

std::string plan_words(const std::string& who, int from, int to) {
  return "cover plan --who " + who + " --from " + in_days(from) + " --to " + in_days(to);
}

void works_here(const KeptLog& kept, const std::string& name, Role role) {
  auto log = SqliteLog::open(kept.path("log.db"), Access::Write);
  REQUIRE(log);
  Draft draft{.id = event_number(9'000), .by = name, .details = PersonAdded{name, role, {}}};
  draft.when = at_hour(1);
  REQUIRE((*log)->append({draft}, draft.when.moment.utc));
}

People people_of(const KeptLog& kept) {
  auto log = SqliteLog::open(kept.path("log.db"), Access::Read);
  REQUIRE(log);
  return fold_people((*log)->read_kinds(roster_kinds()).value());
}

}  // namespace

TEST_CASE("planning a cover opens the kiosk to whoever stands in, and not for longer") {
  const KeptLog kept;
  works_here(kept, "Ilse", Role::Keeper);
  REQUIRE(kept.run(plan_words("Noor", 2, 6)) == 0);
  CHECK(kept.said().find("Their badge opens the kiosk until ") != std::string::npos);
  const People people = people_of(kept);
  REQUIRE(people.named("Noor") != nullptr);
  CHECK(people.named("Noor")->role == Role::Assistant);
  REQUIRE(people.named("Noor")->until);
  CHECK(format_day(*people.named("Noor")->until) == in_days(6));
  REQUIRE(kept.run(plan_words("Ilse", 8, 9)) == 0);
  CHECK_FALSE(people_of(kept).named("Ilse")->until);
}

TEST_CASE("where nobody was set up to work, planning a cover closes the kiosk to nobody") {
  const KeptLog kept;
  REQUIRE(kept.run(plan_words("Noor", 2, 6)) == 0);
  CHECK(people_of(kept).nobody());
}

TEST_CASE("a cover is planned, shown for people and for programs, and ended") {
  const KeptLog kept;
  REQUIRE(kept.run(plan_words("Noor", 2, 6)) == 0);
  CHECK(kept.said().starts_with("Saved: Noor stands in from "));
  REQUIRE(kept.run("cover contact vet Abeba 0170-1 --when 'Only by day.'") == 0);
  REQUIRE(kept.run("cover note --rack A 'The lamp stays on.'") == 0);
  REQUIRE(kept.run("cover show") == 0);
  CHECK(kept.said().find("Abeba: 0170-1\n     Only by day.") != std::string::npos);
  CHECK(kept.said().find("Rack A: The lamp stays on.") != std::string::npos);
  REQUIRE(kept.run("cover show --json") == 0);
  const auto plan = nlohmann::json::parse(kept.said());
  CHECK(plan["from"] == in_days(2));
  REQUIRE(plan["days"].size() == 5);
  for (const auto& day : plan["days"])
    CHECK(day["do"].size() + day["keep_closed"].size() + day["nothing"].size() == 3);
  REQUIRE(kept.run("cover end --who Noor") == 0);
  CHECK(kept.run("cover show") == 1);
  CHECK(kept.complaint().find("No cover is planned") != std::string::npos);
}

TEST_CASE("reversed, past and overlapping covers are refused, and nothing is saved") {
  const KeptLog kept;
  CHECK(kept.run(plan_words("Noor", 6, 2)) == 1);
  CHECK(kept.complaint().find("before it begins") != std::string::npos);
  CHECK(kept.run(plan_words("Noor", -9, -2)) == 1);
  CHECK(kept.complaint().find("is over already") != std::string::npos);
  CHECK(kept.run("cover list") == 0);
  CHECK(kept.said() == "No cover was planned yet.\n");
  REQUIRE(kept.run(plan_words("Noor", 2, 6)) == 0);
  CHECK(kept.run(plan_words("Ilse", 6, 9)) == 1);
  CHECK(kept.complaint().find("Noor stands in from ") != std::string::npos);
  CHECK(kept.run(plan_words("Ilse", 7, 9) + " --rack Z") == 1);
  CHECK(kept.complaint().find("No tub stands in a rack \"Z\"") != std::string::npos);
  CHECK(kept.run("cover plan --who Noor --from 2024-02-30 --to 2024-03-01") == 1);
  CHECK(kept.run("cover note --tub T0000000 hello") == 1);
  CHECK(kept.run("cover contact uncle Bob 1") == 1);
}

TEST_CASE("a note is taken back by its words") {
  const KeptLog kept;
  REQUIRE(kept.run("cover note 'Push the door.'") == 0);
  CHECK(kept.run("cover unsay 'Pull the door.'") == 1);
  REQUIRE(kept.run("cover unsay 'Push the door.'") == 0);
  REQUIRE(kept.run("cover list") == 0);
  CHECK(kept.said().find("Push") == std::string::npos);
}

TEST_CASE("supplies are told without a cover") {
  const KeptLog kept;
  REQUIRE(kept.run("supplies --days 7 --json") == 0);
  const auto supplies = nlohmann::json::parse(kept.said());
  CHECK(supplies["days"].size() == 7);
  CHECK(supplies["tubs"] == 3);
  CHECK(kept.run("supplies --days 0") == 2);
  CHECK(kept.run("supplies --from 2020-01-01") == 1);
}

TEST_CASE("who comes back early is told what happened until today") {
  const KeptLog kept;
  CHECK(kept.run("returned") == 1);
  REQUIRE(kept.run(plan_words("Noor", -3, 6)) == 0);
  REQUIRE(kept.run("returned --json") == 0);
  const auto report = nlohmann::json::parse(kept.said());
  CHECK(report["to"] == in_days(0));
  CHECK(report["silent_days"].size() == 4);
  CHECK(report["not_done"] > 0);
  CHECK(report["tubs"].size() == 3);
}

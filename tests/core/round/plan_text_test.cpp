#include "core/round/plan_text.hpp"

#include <nlohmann/json.hpp>

#include "tests/core/round/rack_room.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

// One tub of each kind: due, wait, leave alone.
RackRoom one_of_each() {
  RackRoom room;
  room.tub(1, {"A", "1", "1"},
           {.key = "ov-1", .species = "Omothymus violaceopes", .stage = Stage::Juvenile});
  room.tub(2, {"A", "1", "2"},
           {.key = "ni-2", .species = "Neoholothele incei", .stage = Stage::Juvenile});
  room.tub(3, {"A", "2", "1"},
           {.key = "hh-3", .species = "Haplocosmia himalayana", .stage = Stage::Juvenile});
  room.happened(9, 1, Offered{Outcome::Took, "cricket", 1, Millimetres{8}}).believed(1, 0.1);
  room.happened(2, 2, Offered{Outcome::Refused, "cricket", 1, Millimetres{8}}).believed(2, 0.1);
  room.happened(0.2, 3, Looked{{Sign::OnItsBack}});
  return room;
}

Preparation ready_for(const RackRoom& room) {
  return prepare(room.plan(), room.collection(), default_rules().margin);
}

}  // namespace

TEST_CASE("the plan on paper says what to carry, what to do and why, shelf by shelf") {
  const auto room = one_of_each();
  const std::string code = tub_number(1).grouped();
  const std::string expected =
      "Plan for 2031-04-11\n"
      "\n"
      "Before you start\n"
      "\n"
      "  Bring 1 cricket of about 8 mm: 1 planned.\n"
      "  Venom of medical importance: 1 tub. Long forceps, no handling.\n"
      "\n"
      "Due: 1\n"
      "\n"
      " rack A, shelf 1\n"
      "  Careful at 1: Fast, with venom of medical importance: long forceps, hands outside.\n"
      "    1  " +
      code +
      "  Omothymus violaceopes (ov-1)\n"
      "       Feeding; last meal 9 days ago.\n"
      "       Offer 1 cricket of about 8 mm.\n"
      "         - Last meal 9 days ago.\n";
  const auto text = plan_as_text(room.plan(), ready_for(room), room.collection());
  CHECK(text.substr(0, expected.size()) == expected);
  CHECK(text.find("\nLeave alone: 1\n") != std::string::npos);
  CHECK(text.find("URGENT: On its back: leave it entirely alone.") != std::string::npos);
  CHECK(text.find("\nWait: 1\n") != std::string::npos);
}

TEST_CASE("the plan as JSON holds the same facts") {
  const auto room = one_of_each();
  const auto json =
      nlohmann::json::parse(plan_as_json(room.plan(), ready_for(room), room.collection()));
  CHECK(json["day"] == "2031-04-11");
  REQUIRE(json["due"].size() == 1);
  const auto& due = json["due"][0];
  CHECK(due["animal"] == "ov-1");
  CHECK(due["enclosure"] == std::string(tub_number(1).text()));
  CHECK(due["task"] == "offer");
  CHECK(due["prey"]["size_mm"] == 8);
  CHECK(due["position"] == "1");
  CHECK(json["wait"][0]["task"] == "offer again");
  CHECK(json["wait"][0]["next_due"] == "2031-04-13");
  CHECK(json["leave_alone"][0]["urgent"] == true);
  CHECK(json["prepare"]["prey"][0]["bring"] == 1);
}

TEST_CASE("an empty collection has an empty plan, not a broken one") {
  const auto json = nlohmann::json::parse(plan_as_json({}, {}, {}));
  CHECK(json["due"].empty());
  CHECK(plan_as_text({}, {}, {}).find("Due: 0") != std::string::npos);
}

TEST_CASE("a name that is not UTF-8 does not break the JSON") {
  RackRoom room;
  room.tub(1, {"A\xff", "1", "1"}, {.key = "\xc3", .species = "Novogenus invented"});
  CHECK_NOTHROW(nlohmann::json::parse(plan_as_json(room.plan(), {}, room.collection())));
}

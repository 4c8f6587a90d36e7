// `rackside-log today`, run as a keeper would.

#include <nlohmann/json.hpp>

#include "tests/core/program/kept_log.hpp"

using namespace rackside;
using namespace rackside::tests;

TEST_CASE("today is printed for people") {
  const KeptLog kept;
  REQUIRE(kept.run("today --as-of 2024-03-19") == 0);
  const std::string text = kept.said();
  CHECK(text.starts_with("Plan for 2024-03-19\n"));
  CHECK(text.find("Bring 1 cricket of about 10 mm") != std::string::npos);
  CHECK(text.find("Due: 1\n") != std::string::npos);
  CHECK(text.find("Leave alone: 1\n") != std::string::npos);
  CHECK(text.find("URGENT: On its back: leave it entirely alone.") != std::string::npos);
}

TEST_CASE("today is printed for other programs, with the same facts") {
  const KeptLog kept;
  REQUIRE(kept.run("today --as-of 2024-03-19 --json") == 0);
  const auto plan = nlohmann::json::parse(kept.said());
  CHECK(plan["day"] == "2024-03-19");
  REQUIRE(plan["due"].size() == 1);
  CHECK(plan["due"][0]["animal"] == "ec-1");
  CHECK(plan["due"][0]["task"] == "offer");
  CHECK(plan["wait"][0]["animal"] == "ec-2");
  CHECK(plan["leave_alone"][0]["animal"] == "ec-3");
}

TEST_CASE("what is recorded after the day changes nothing in its plan") {
  const KeptLog kept;
  const KeptLog with_later(
      "2024-03-20,ec-1,offered,refused,cricket,1,\n2024-03-21,ec-2,died,,,,\n"
      "2024-03-25,ec-3,shed found,,,,\n");
  REQUIRE(kept.run("today --as-of 2024-03-19 --json") == 0);
  REQUIRE(with_later.run("today --as-of 2024-03-19 --json") == 0);
  // Tubs get fresh codes at import, so only the codes may differ.
  const auto without_codes = [](const std::string& text) {
    auto plan = nlohmann::json::parse(text);
    for (const char* list : {"due", "wait", "leave_alone"})
      for (auto& tub : plan[list]) tub.erase("enclosure");
    return plan;
  };
  CHECK(without_codes(kept.said()) == without_codes(with_later.said()));
  REQUIRE(with_later.run("today --as-of 2024-03-26 --json") == 0);
  CHECK(without_codes(kept.said()) != without_codes(with_later.said()));
}

TEST_CASE("a day that no calendar has, or a log that is not there, is one sentence") {
  const KeptLog kept;
  CHECK(kept.run("today --as-of 2024-02-30") == 1);
  CHECK(kept.said().empty());
  CHECK(kept.run("--log " + kept.path("none.db") + " today") != 0);
  CHECK(kept.run("today") == 0);
}

// `rackside-log rules` and `readings`, run as a keeper would.

#include "tests/core/program/kept_log.hpp"

using namespace rackside;
using namespace rackside::tests;

TEST_CASE("a rule that is set for one animal holds for it and changes its plan") {
  const KeptLog kept;
  REQUIRE(kept.run("today --as-of 2024-03-19") == 0);
  CHECK(kept.said().find("Due: 1\n") != std::string::npos);
  REQUIRE(kept.run("rules --animal ec-1 --set feed_every_juvenile 60") == 0);
  CHECK(kept.said() == "Saved: feed_every_juvenile is now 60.\n");
  REQUIRE(kept.run("rules --animal ec-1") == 0);
  CHECK(kept.said().find("60 days     days between meals of a juvenile (usually 7)") !=
        std::string::npos);
  REQUIRE(kept.run("rules --animal ec-2") == 0);
  CHECK(kept.said().find("(usually") == std::string::npos);
}

TEST_CASE("a rule for a species holds for its animals, and the log keeps it") {
  const KeptLog kept;
  REQUIRE(kept.run("rules --species \"Encyocratella olivacea\" --set prey locust") == 0);
  REQUIRE(kept.run("rules --animal ec-1") == 0);
  CHECK(kept.said().find("locust") != std::string::npos);
  REQUIRE(kept.run("today --as-of 2024-03-19") == 0);  // before it
  CHECK(kept.said().find("locust") == std::string::npos);
}

TEST_CASE("a rule or a value that makes no sense is one sentence, and nothing was changed") {
  const KeptLog kept;
  CHECK(kept.run("rules --set feed_every_dragon 3") == 1);
  CHECK(kept.complaint().find("There is no rule \"feed_every_dragon\"") != std::string::npos);
  CHECK(kept.run("rules --set retry_after never") == 1);
  CHECK(kept.complaint().find("takes 1 to 60 days") != std::string::npos);
  CHECK(kept.run("rules --animal nobody --set retry_after 5") == 1);
  CHECK(kept.run("rules --set retry_after") == 2);
}

TEST_CASE("a sensor's file is taken over once, however often it is read") {
  const KeptLog kept;
  kept.write("sensor.csv",
             "when,temperature,humidity\n2024-03-19T06:00Z,17.5,62\n2024-03-19T06:10Z,17.6,62\n"
             "2024-03-19T08:00Z,18,nan\n2024-03-19T09:00Z,18.2,61\n");
  const std::string words = "readings --rack A " + kept.path("sensor.csv");
  REQUIRE(kept.run(words) == 0);
  CHECK(kept.said() ==
        "Taken over: 2 readings of 3.\nLine 4 was passed over: its humidity cannot be.\n");
  REQUIRE(kept.run(words) == 0);
  CHECK(kept.said().starts_with("Taken over: 0 readings of 3.\n"));
  REQUIRE(kept.run("export --events " + kept.path("e.csv")) == 0);
  CHECK(read_file(kept.folder / "e.csv").find(",temperature,") != std::string::npos);
}

TEST_CASE("a file that is no sensor's is one sentence") {
  const KeptLog kept;
  kept.write("poem.txt", "eight legs in the dark\n");
  CHECK(kept.run("readings " + kept.path("poem.txt")) == 1);
  CHECK(kept.complaint().find("no sensor's file") != std::string::npos);
  CHECK(kept.run("readings " + kept.path("nothing.txt")) == 1);
}

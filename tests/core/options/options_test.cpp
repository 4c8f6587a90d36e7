#include "core/options/options.hpp"

#include <iostream>
#include <sstream>

#include "tests/frame.hpp"

using namespace rackside;

namespace {

// What a program wrote while this lives.
class Heard {
 public:
  explicit Heard(std::ostream& stream) : stream_(stream), was_(stream.rdbuf(text_.rdbuf())) {}
  ~Heard() { stream_.rdbuf(was_); }
  [[nodiscard]] std::string text() const { return text_.str(); }

 private:
  std::ostream& stream_;
  std::ostringstream text_;
  std::streambuf* was_;
};

struct Told {
  std::optional<int> end;
  std::string out, problem;
};

Told read(CommandLine& line, std::vector<const char*> typed) {
  typed.insert(typed.begin(), "program");
  const Heard out(std::cout);
  const Heard problem(std::cerr);
  const auto end = line.read(static_cast<int>(typed.size()), typed.data());
  return {end, out.text(), problem.text()};
}

bool says(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("what was typed stands in the variables") {
  std::string log;
  int days = 14;
  unsigned seed = 1;
  std::optional<int> instar;
  std::optional<double> density;
  std::vector<std::string> racks;
  bool json = false;
  CommandLine line("", "program");
  line.option("log", log, "");
  line.option("--days", days, "");
  line.option("--seed", seed, "");
  line.option("--instar", instar, "");
  line.option("--density", density, "");
  line.option("--rack", racks, "");
  line.flag("--json", json, "");

  const auto told = read(line, {"a.db", "--instar", "3", "--density=2.5", "--seed", "7", "--json",
                                "--rack", "A", "--rack", "B"});

  CHECK_FALSE(told.end);
  CHECK(log == "a.db");
  CHECK(days == 14);
  CHECK(seed == 7);
  CHECK(instar == 3);
  CHECK(density == 2.5);
  CHECK(racks == std::vector<std::string>{"A", "B"});
  CHECK(json);
}

TEST_CASE("help is told on stdout and ends the program well") {
  std::string day;
  int days = 14;
  CommandLine line("What it is for.", "program");
  line.option("--from", day, "the first day").value_name("DATE");
  line.option("--days", days, "so many").shows_default();
  line.footer("The end.");
  line.tells_all_help();
  line.subcommand("cover", "stand in").option("--who", day, "the person");

  const auto told = read(line, {"--help"});
  CHECK(told.end == 0);
  CHECK(told.problem.empty());
  for (const char* part : {"What it is for.", "--from DATE", "the first day", "INT=14", "The end."})
    CHECK(says(told.out, part));
  CHECK_FALSE(says(told.out, "the person"));
  CHECK(says(read(line, {"--help-all"}).out, "the person"));
}

TEST_CASE("what does not fit is told on stderr and ends the program with wrong words") {
  std::string day, tub, rack, shelf, paper;
  int dots = 300;
  std::vector<std::string> rule;
  CommandLine line("", "program");
  line.option("--from", day, "").required();
  const auto of_tub = line.option("--tub", tub, "");
  const auto of_rack = line.option("--rack", rack, "").excludes(of_tub);
  line.option("--shelf", shelf, "").needs(of_rack);
  line.option("--paper", paper, "").one_of({"a4", "a5"});
  line.option("--dpi", dots, "").within(150, 600);
  line.option("--set", rule, "").expected(2);
  line.option("--date", day, "").checked_by([](const std::string& typed) {
    return typed == "never" ? "that is no day" : "";
  });

  const std::vector<std::pair<std::vector<const char*>, std::string>> wrong{
      {{}, "--from is required"},
      {{"--from", "x", "--rack", "A", "--tub", "T"}, "excludes"},
      {{"--from", "x", "--shelf", "1"}, "--shelf requires --rack"},
      {{"--from", "x", "--paper", "a9"}, "a9 not in {a4,a5}"},
      {{"--from", "x", "--dpi", "601"}, "601 not in range 150 to 600"},
      {{"--from", "x", "--set", "only"}, "--set"},
      {{"--from", "x", "--date", "never"}, "that is no day"},
      {{"--from", "x", "--other"}, "--other"}};
  for (const auto& [typed, problem] : wrong) {
    const auto told = read(line, typed);
    INFO(told.problem);
    CHECK(told.end == CommandLine::wrong_words);
    CHECK(told.out.empty());
    CHECK(says(told.problem, problem));
  }
  CHECK_FALSE(read(line, {"--from", "x", "--dpi", "600", "--paper", "a5", "--set", "a", "b"}).end);
}

TEST_CASE("a program may tell problems in its own way") {
  CommandLine line("", "program");
  line.tells_problems_as([](const std::string& problem) { return "program: " + problem + ".\n"; });
  CHECK(read(line, {"--other"}).problem ==
        "program: The following argument was not expected: --other.\n");
}

TEST_CASE("words stand for numbers") {
  std::optional<int> palette;
  CommandLine line("", "program");
  line.option("--palette", palette, "").stands_for({{"day", 0}, {"night", 2}});
  CHECK_FALSE(read(line, {"--palette", "night"}).end);
  CHECK(palette == 2);
  CHECK(read(line, {"--palette", "noon"}).end == CommandLine::wrong_words);
}

TEST_CASE("one of several has to be typed, or only one of them may be") {
  std::string animals, events;
  CommandLine line("", "program");
  const auto of_animals = line.option("--animals", animals, "");
  const auto of_events = line.option("--events", events, "");

  SECTION("at least one") {
    line.require_any({of_animals, of_events});
    CHECK(says(read(line, {}).problem, "--animals or --events is required"));
    CHECK(read(line, {"--animals", ""}).end == CommandLine::wrong_words);
    CHECK_FALSE(read(line, {"--events", "e.csv"}).end);
  }
  SECTION("at most one") {
    line.allow_one_of({of_animals, of_events});
    CHECK(read(line, {"--animals", "a", "--events", "e"}).end == CommandLine::wrong_words);
    CHECK_FALSE(read(line, {"--events", "e.csv"}).end);
  }
}

TEST_CASE("a subcommand knows whether it was chosen") {
  std::string log;
  int worked = 0;
  CommandLine line("", "program");
  line.option("--log", log, "");
  line.require_subcommand();
  line.falls_through();
  auto merge = line.subcommand("merge", "");
  merge.when_chosen([&] { ++worked; });
  auto check = line.subcommand("check", "");

  CHECK(says(read(line, {}).problem, "A subcommand is required"));
  CHECK(read(line, {"merge", "--other"}).end == CommandLine::wrong_words);
  CHECK(worked == 0);
  CHECK_FALSE(read(line, {"merge", "--log", "a.db"}).end);
  CHECK(log == "a.db");
  CHECK(worked == 1);
  CHECK(merge.was_chosen());
  CHECK_FALSE(check.was_chosen());
}

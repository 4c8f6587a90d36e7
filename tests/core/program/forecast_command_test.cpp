// Forecast and backtest through the real program, from imported files.

#include <sys/wait.h>

#include <cstdlib>
#include <nlohmann/json.hpp>
#include <sstream>

#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

struct Keeper {
  TemporaryFolder folder;

  std::string run(const std::string& words) const {
    const std::string command = RACKSIDE_BIN_DIR "/rackside-log --log " +
                                (folder / "log.db").string() + " " + words + " >" +
                                (folder / "out").string() + " 2>" + (folder / "err").string();
    const int code = WEXITSTATUS(std::system(command.c_str()));
    INFO(command << "\n" << read_file(folder / "err"));
    REQUIRE(code == 0);
    return read_file(folder / "out");
  }
  void take_over(const std::string& events) const {
    write_file(folder / "a.csv",
               "animal,species,stage,acquired\nop-1,Orphnaecus philippinus,juvenile,2023-01-01\n"
               "op-2,Orphnaecus philippinus,juvenile,2023-01-01\n"
               "op-3,Orphnaecus philippinus,mature male,2023-01-01\n");
    write_file(folder / "e.csv", "when,animal,event,outcome\n" + events);
    run("import --animals " + (folder / "a.csv").string() + " --events " +
        (folder / "e.csv").string());
  }
};

const std::string past =
    "2023-02-01,op-1,moult,\n2023-05-20,op-1,shed found,\n2023-06-10,op-1,offered,took\n"
    "2023-09-01,op-1,offered,refused\n2023-09-05,op-2,died,\n";

}  // namespace

TEST_CASE("forecast prints one object a line for each living animal, and nothing later moves it") {
  const Keeper keeper;
  keeper.take_over(past);
  const std::string told = keeper.run("forecast --as-of 2023-09-10 --json");
  std::istringstream lines(told);
  int count = 0;
  for (std::string line; std::getline(lines, line); ++count) {
    const auto object = nlohmann::json::parse(line);
    CHECK(object.size() == 7);
    CHECK(object.at("as_of") == "2023-09-10");
    CHECK(object.at("next_moult").size() == 19);
    CHECK(object.at("next_moult").at("0.05") <= object.at("next_moult").at("0.95"));
    CHECK(object.at("p_premoult").is_number());
    CHECK(object.at("p_moulted_unseen").is_number());
    CHECK(object.at("why").is_array());
    CHECK(object.at("animal") == (count == 0 ? "op-1" : "op-3"));
    if (count == 1) CHECK(object.at("state") == "finished");
  }
  CHECK(count == 2);
  keeper.take_over(past + "2023-09-11,op-1,moult,\n2023-10-01,op-3,died,\n");
  CHECK(keeper.run("forecast --as-of 2023-09-10 --json") == told);
}

TEST_CASE("forecast tells people a table, backtest says when it is too early to judge") {
  const Keeper keeper;
  keeper.take_over(past);
  CHECK(keeper.run("forecast --as-of 2023-09-10").find("op-1") != std::string::npos);
  const std::string judged = keeper.run("backtest --from 2023-03-01 --to 2023-05-01 --picture " +
                                        (keeper.folder / "picture.svg").string());
  CHECK(judged.find("Too little to judge by") != std::string::npos);
  CHECK(read_file(keeper.folder / "picture.svg").find("<svg") != std::string::npos);
}

#include <filesystem>
#include <fstream>

#include "tests/frame.hpp"
#include "tests/kiosk/program/process.hpp"

using rackside::tests::run;

namespace {

const std::string kiosk = std::string(RACKSIDE_BIN_DIR) + "/rackside";

std::filesystem::path new_folder() {
  std::string name = (std::filesystem::temp_directory_path() / "rackside-options-XXXXXX").string();
  return mkdtemp(name.data());
}

}  // namespace

TEST_CASE("the kiosk's help names every option and ends well") {
  std::string said;
  CHECK(run({kiosk, "--help"}, said) == 0);
  for (const char* option :
       {"--log", "--window", "--frames", "--by", "--density", "--palette", "--tell-to"})
    CHECK(said.find(option) != std::string::npos);
}

TEST_CASE("a wrong option is told and ends with code 2") {
  std::string said;
  CHECK(run({kiosk, "--levitate"}, said) == 2);
  CHECK(said.find("--levitate") != std::string::npos);
  CHECK(run({kiosk, "--window", "wide"}, said) == 2);
  CHECK(said.find("WIDTHxHEIGHT") != std::string::npos);
  CHECK(run({kiosk, "--palette", "pink"}, said) == 2);
}

TEST_CASE("a file that is no log is left alone and told in one sentence") {
  const auto folder = new_folder();
  std::ofstream(folder / "shopping.txt") << std::string(5000, 'x');
  std::string said;
  CHECK(run({kiosk, "--log", (folder / "shopping.txt").string()}, said) == 1);
  INFO(said);
  CHECK(said.find("rackside: ") == 0);
  CHECK(std::filesystem::file_size(folder / "shopping.txt") == 5000);
  CHECK(run({kiosk, "--log", (folder / "nowhere" / "log.db").string()}, said) == 1);
  CHECK(said.find("rackside: ") == 0);
  std::filesystem::remove_all(folder);
}

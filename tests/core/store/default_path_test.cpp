#include "core/store/default_path.hpp"

#include <cstdlib>

#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
namespace fs = std::filesystem;

TEST_CASE("without a name the log is in the user's data folder, which is made") {
  const TemporaryFolder folder;
  setenv("XDG_DATA_HOME", (folder / "data").c_str(), 1);
  const auto path = default_log_path();
  REQUIRE(path);
  CHECK(*path == folder / "data/rackside/log.db");
  CHECK(fs::is_directory(path->parent_path()));
  CHECK((fs::status(path->parent_path()).permissions() & fs::perms::others_all) == fs::perms::none);
}

TEST_CASE("a data folder that is no absolute path is passed over, as the specification says") {
  const TemporaryFolder folder;
  setenv("XDG_DATA_HOME", "data", 1);
  setenv("HOME", folder.path().c_str(), 1);
  CHECK(default_log_path().value() == folder / ".local/share/rackside/log.db");
}

TEST_CASE("a data folder that cannot be made is told, with what to do") {
  const TemporaryFolder folder;
  write_file(folder / "file", "");
  setenv("XDG_DATA_HOME", (folder / "file").c_str(), 1);
  const auto path = default_log_path();
  REQUIRE_FALSE(path);
  CHECK(path.error().sentence.find("--log") != std::string::npos);
}

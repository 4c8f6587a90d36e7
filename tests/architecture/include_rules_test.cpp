// Who may include whom. Linking alone does not hold this: a header-only library or a struct from a
// higher level slips through. The table below is the map of the rooms.

#include <fstream>
#include <sstream>
#include <vector>

#include "tests/frame.hpp"

namespace fs = std::filesystem;

namespace {

struct Include {
  std::string file;    // relative to the top
  std::string target;  // what stands between the quotes or brackets
};

struct Rule {
  std::string room;                      // files whose path starts with this ...
  std::vector<std::string> may_not;      // ... include nothing that starts with one of these
  std::vector<std::string> except = {};  // unless the file's path starts with one of these
};

const std::vector<std::string> screens{"SDL", "ZXing", "ReadBarcode", "libv4l", "linux/videodev2"};
const std::vector<std::string> printing{"cairo", "qrencode", "poppler"};

// What only one room may touch.
const std::vector<Rule> rules{
    {"core/", {"labels/", "kiosk/", "tests/", "demo/"}},
    {"core/", screens},
    {"core/", {"qrencode", "poppler"}},
    {"core/", {"cairo"}, {"core/chart/"}},
    {"labels/", {"kiosk/", "tests/", "demo/", "SDL", "libv4l", "linux/videodev2", "sqlite3"}},
    {"kiosk/", {"tests/", "demo/", "sqlite3", "qrencode", "poppler"}},
    {"", {"sqlite3", "SQLiteCpp"}, {"core/store/", "tests/"}},
    {"", {"CLI/"}, {"core/options/"}},
    {"", {"sodium"}, {"core/pin_file/", "tests/"}},
    {"labels/", {"qrencode"}, {"labels/symbol/"}},
    {"labels/", {"pango"}, {"labels/render/"}},
    {"labels/", {"poppler"}, {"labels/read/"}},
    {"labels/", {"spawn.h", "sys/wait.h"}, {"labels/printer/"}},
    {"", {"sys/un.h"}, {"kiosk/service/", "tests/"}},
    {"labels/",
     {"cairo"},
     {"labels/render/", "labels/cards/", "labels/calibration/", "labels/handover/"}},
    {"",
     {"core/store/"},
     {"core/store/", "core/program/", "labels/program/", "kiosk/program/", "demo/", "tests/"}},
};

// The pure part of the domain: no clock, no files, no processes, no random device, no printing.
const std::vector<std::string> pure_rooms{
    "core/values/",   "core/words/",       "core/code/",     "core/event/",    "core/collection/",
    "core/action/",   "core/log/",         "core/forecast/", "core/backtest/", "core/care/",
    "core/round/",    "core/cover/",       "core/climate/",  "core/people/",   "core/growth/",
    "core/overview/", "core/interchange/", "kiosk/model/",   "kiosk/view/",    "labels/symbol/",
    "labels/sheet/",  "labels/label/",     "labels/batch/"};
const std::vector<std::string> impure{"filesystem", "fstream", "iostream", "cstdio",
                                      "unistd.h",   "thread",  "random",   "ctime",
                                      "date/tz.h",  "SDL",     "sqlite3"};

bool starts_with_any(const std::string& text, const std::vector<std::string>& beginnings) {
  for (const auto& beginning : beginnings)
    if (text.rfind(beginning, 0) == 0) return true;
  return false;
}

std::vector<Include> includes_of(const fs::path& file, const std::string& relative) {
  std::vector<Include> list;
  std::ifstream in(file);
  for (std::string line; std::getline(in, line);) {
    if (line.rfind("#include", 0) != 0) continue;
    const auto open = line.find_first_of("<\"");
    const auto close = line.find_first_of(">\"", open + 1);
    if (close != std::string::npos)
      list.push_back({relative, line.substr(open + 1, close - open - 1)});
  }
  return list;
}

std::vector<Include> all_includes() {
  std::vector<Include> list;
  const fs::path top = RACKSIDE_SOURCE_DIR;
  for (const char* folder : {"core", "labels", "kiosk", "demo"})
    for (const auto& entry : fs::recursive_directory_iterator(top / folder)) {
      const auto extension = entry.path().extension();
      if (extension != ".cpp" && extension != ".hpp") continue;
      const auto found = includes_of(entry.path(), fs::relative(entry.path(), top).string());
      list.insert(list.end(), found.begin(), found.end());
    }
  return list;
}

}  // namespace

TEST_CASE("each room includes only what its level may use") {
  const auto includes = all_includes();
  REQUIRE(includes.size() > 20);
  std::ostringstream broken;
  for (const Rule& rule : rules)
    for (const Include& include : includes)
      if (include.file.rfind(rule.room, 0) == 0 && !starts_with_any(include.file, rule.except) &&
          starts_with_any(include.target, rule.may_not))
        broken << include.file << " includes " << include.target << "\n";
  INFO(broken.str());
  CHECK(broken.str().empty());
}

TEST_CASE("the pure rooms know no clock, file, thread or random device") {
  std::ostringstream broken;
  for (const Include& include : all_includes())
    if (starts_with_any(include.file, pure_rooms) && starts_with_any(include.target, impure))
      broken << include.file << " includes " << include.target << "\n";
  INFO(broken.str());
  CHECK(broken.str().empty());
}

TEST_CASE("JSON is read and written in .cpp files only") {
  std::ostringstream broken;
  for (const Include& include : all_includes())
    if (include.target.rfind("nlohmann", 0) == 0 && fs::path(include.file).extension() == ".hpp")
      broken << include.file << "\n";
  INFO(broken.str());
  CHECK(broken.str().empty());
}

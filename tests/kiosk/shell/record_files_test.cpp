#include "kiosk/shell/record_files.hpp"

#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"

using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

std::vector<std::string> names(const std::vector<RecordFile>& files) {
  std::vector<std::string> list;
  for (const RecordFile& file : files) list.push_back(file.name);
  std::ranges::sort(list);
  return list;
}

}  // namespace

TEST_CASE("CSV files are found beside the log and two folders deep on sticks") {
  const TemporaryFolder place;
  for (const char* folder : {"log/bring-in", "media/ines/BLUE/deeper"})
    std::filesystem::create_directories(place / folder);
  for (const char* file : {"log/bring-in/events.csv", "log/other.csv",
                           "media/ines/BLUE/ANIMALS.CSV", "media/ines/BLUE/deeper/no.csv",
                           "media/ines/BLUE/._animals.csv", "media/ines/BLUE/photo.jpg"})
    write_file(place / file, "x");
  const auto files = RecordFiles(place / "log/log.db", {place / "media"}).find();
  CHECK(names(files) == std::vector<std::string>{"ANIMALS.CSV", "events.csv"});
  for (const RecordFile& file : files)
    CHECK(file.folder == (file.name == "events.csv" ? "bring-in" : "BLUE"));
}

TEST_CASE("the latest file comes first, and of very many the latest hundred") {
  const TemporaryFolder place;
  std::filesystem::create_directories(place / "bring-in");
  for (int i = 0; i < 120; ++i) {
    const auto path = place / ("bring-in/" + std::to_string(i) + ".csv");
    write_file(path, "x");
    std::filesystem::last_write_time(
        path, std::filesystem::file_time_type::clock::now() - std::chrono::hours{i});
  }
  const auto files = RecordFiles(place / "log.db", {}).find();
  REQUIRE(files.size() == 100);
  CHECK(files.front().name == "0.csv");
  CHECK(files.back().name == "99.csv");
}

TEST_CASE("where there is no stick and no folder there is nothing, and nothing goes wrong") {
  const TemporaryFolder place;
  CHECK(RecordFiles(place / "log.db", {place / "media"}).find().empty());
}

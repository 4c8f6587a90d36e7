#include "core/store/pictures.hpp"

#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

namespace fs = std::filesystem;

struct Desk {
  TemporaryFolder folder;
  fs::path log = folder / "log.db", copy = folder / "copy.db";
  fs::path kept = pictures_beside(log), copies = pictures_beside(copy);

  Desk() {
    fs::create_directories(kept);
    write_file(kept / "a.png", std::string("\x89PNG\r\n\0x", 9));
    write_file(kept / "b.png", "b");
  }
};

}  // namespace

TEST_CASE("pictures are copied whole beside the copy of the log, but none that is half written") {
  const Desk desk;
  write_file(desk.kept / "c.png.part77", "half");
  CHECK(back_up_pictures(desk.log, desk.copy) == 2);
  CHECK(read_file(desk.copies / "a.png") == read_file(desk.kept / "a.png"));
  CHECK(read_file(desk.copies / "b.png") == "b");
  CHECK_FALSE(fs::exists(desk.copies / "c.png.part77"));
}

TEST_CASE("a log without pictures has a copy without a folder for them") {
  const Desk desk;
  fs::remove_all(desk.kept);
  CHECK(back_up_pictures(desk.log, desk.copy) == 0);
  CHECK_FALSE(fs::exists(desk.copies));
}

TEST_CASE("a picture that is there already and is another one stays, and is told") {
  const Desk desk;
  fs::create_directories(desk.copies);
  write_file(desk.copies / "b.png", "another");
  const auto copied = back_up_pictures(desk.log, desk.copy);
  REQUIRE_FALSE(copied);
  CHECK(copied.error().kind == ErrorKind::Broken);
  CHECK(copied.error().sentence.find("is not the same as") != std::string::npos);
  CHECK(read_file(desk.copies / "b.png") == "another");
}

TEST_CASE("where no picture can be written, it is told") {
  const Desk desk;
  write_file(desk.copies, "no folder");
  const auto copied = back_up_pictures(desk.log, desk.copy);
  REQUIRE_FALSE(copied);
  CHECK(copied.error().sentence.find("was not written") != std::string::npos);
}

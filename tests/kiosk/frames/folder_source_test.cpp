#include "kiosk/frames/folder_source.hpp"

#include <unistd.h>

#include <fstream>
#include <thread>

#include "tests/frame.hpp"

using namespace rackside;
using std::chrono::milliseconds;
namespace fs = std::filesystem;

namespace {

struct TemporaryFolder {
  fs::path path;
  TemporaryFolder() {
    static int number = 0;
    path = fs::temp_directory_path() /
           ("frames_" + std::to_string(getpid()) + "_" + std::to_string(number++));
    fs::create_directory(path);
  }
  ~TemporaryFolder() { fs::remove_all(path); }

  void write(const std::string& name, char grey) const {
    std::ofstream(path / name, std::ios::binary) << "P5 1 1 255\n" << grey;
  }
};

// The grey value of the next one-pixel picture; 0 for none.
char next_grey(FrameSource& source, milliseconds patience = milliseconds{0}) {
  const auto picture = source.next(patience);
  REQUIRE(picture);
  return *picture ? static_cast<char>((*picture)->pixels.at(0)) : '\0';
}

}  // namespace

TEST_CASE("a folder gives each of its pictures once, in the order of their names") {
  const TemporaryFolder folder;
  for (const char c : std::string("cab")) folder.write(std::string(1, c) + ".pgm", c);
  folder.write("readme.txt", 'x');
  const auto source = FolderSource::open(folder.path).value();
  CHECK(next_grey(*source) == 'a');
  CHECK(next_grey(*source) == 'b');
  CHECK(next_grey(*source) == 'c');
  CHECK(next_grey(*source) == '\0');
}

TEST_CASE("a picture dropped into the folder comes at once") {
  const TemporaryFolder folder;
  const auto source = FolderSource::open(folder.path).value();
  std::thread later([&] {
    std::this_thread::sleep_for(milliseconds{20});
    folder.write("new.pgm", 'n');
  });
  CHECK(next_grey(*source, milliseconds{5000}) == 'n');
  later.join();
}

TEST_CASE("a picture moved into the folder counts, and one that is overwritten counts again") {
  const TemporaryFolder folder, elsewhere;
  const auto source = FolderSource::open(folder.path).value();
  elsewhere.write("m.pgm", 'm');
  fs::rename(elsewhere.path / "m.pgm", folder.path / "m.pgm");
  CHECK(next_grey(*source, milliseconds{1000}) == 'm');
  folder.write("m.pgm", 'o');
  CHECK(next_grey(*source, milliseconds{1000}) == 'o');
}

TEST_CASE("a file that is no picture is said once and passed over") {
  const TemporaryFolder folder;
  std::ofstream(folder.path / "a.png") << "not a picture";
  folder.write("b.pgm", 'b');
  const auto source = FolderSource::open(folder.path).value();
  CHECK(source->next(milliseconds{0}).error().kind == ErrorKind::BadInput);
  CHECK(next_grey(*source) == 'b');
}

TEST_CASE("one file gives its pictures and then nothing more") {
  const TemporaryFolder folder;
  std::ofstream(folder.path / "clip.pgm") << "P5 1 1 255\nxP5 1 1 255\ny";
  const auto source = FolderSource::open(folder.path / "clip.pgm").value();
  CHECK(next_grey(*source) == 'x');
  CHECK(next_grey(*source) == 'y');
  CHECK(next_grey(*source, milliseconds{1}) == '\0');
}

TEST_CASE("a waiting source can be interrupted from another thread") {
  const TemporaryFolder folder;
  const auto source = FolderSource::open(folder.path).value();
  std::thread other([&] { source->interrupt(); });
  CHECK(next_grey(*source, milliseconds{60'000}) == '\0');
  other.join();
}

TEST_CASE("a folder that is not there is refused") {
  CHECK(FolderSource::open("/nowhere/frames").error().kind == ErrorKind::NotFound);
}

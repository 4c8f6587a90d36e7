// Records from a CSV file: looked at first, then written, with a way to stop.

#include "kiosk/view/bring_in_view.hpp"
#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

struct Stick {
  TableKiosk kiosk;

  Stick() {
    kiosk.record_files = {{"/media/blue/animals.csv", "animals.csv", "blue"}};
    kiosk.record_counts = RecordCounts{12, 11, 0, 0};
    kiosk.start();
    kiosk.does(Show{ScreenName::BringIn});
  }
  void look_into() { kiosk.does(LookInto{kiosk.record_files.front()}); }
  [[nodiscard]] BringInView view() const { return view_bring_in(kiosk.model()); }
};

}  // namespace

TEST_CASE("files are listed, looked into and only then brought in") {
  Stick stick;
  REQUIRE(stick.view().files.size() == 1);
  CHECK(stick.view().files[0].folder == "blue");
  CHECK(stick.view().key == "look again");
  stick.look_into();
  CHECK(stick.view().words == "New in animals.csv: 12 animals, 11 tubs.");
  CHECK(stick.view().key == "bring it in");
  CHECK_FALSE(stick.kiosk.writes_a_file);
  stick.kiosk.does(BringIn{});
  CHECK(stick.kiosk.writes_a_file);
  stick.kiosk.does(PartBroughtIn{{20, 23}});
  CHECK(stick.view().words == "Writing: 20 of 23. Everything else goes on meanwhile.");
  stick.kiosk.does(kiosk::BroughtIn{{23, 23}, {}, {tub_number(1)}});
  CHECK(stick.kiosk.notice() == "Brought in: 12 animals, 11 tubs.");
}

TEST_CASE("tubs that came with a file get their labels, those that came to nothing do not") {
  Stick stick;
  const Code known = stick.kiosk.house(1, "Omothymus violaceopes");
  stick.look_into();
  stick.kiosk.does(BringIn{});
  stick.kiosk.does(kiosk::BroughtIn{{23, 23}, {}, {known, tub_number(2)}});
  CHECK(stick.view().key == "print 2 labels");
  stick.kiosk.does(PrintBroughtIn{});
  REQUIRE(stick.kiosk.labels_wanted.size() == 1);
  CHECK(stick.kiosk.labels_wanted[0].tubs == std::vector{known});
  CHECK(stick.view().key == "look again");
}

TEST_CASE("stopped half-way, it says how far it is and that it can go on") {
  Stick stick;
  stick.look_into();
  stick.kiosk.does(BringIn{});
  stick.kiosk.does(StopBringingIn{});
  CHECK_FALSE(stick.kiosk.writes_a_file);
  stick.kiosk.does(kiosk::BroughtIn{{10, 23}, {}, {}});
  CHECK(stick.kiosk.notice() ==
        "Stopped. 10 of 23 entries are in the log; the same brought in again goes on there.");
}

TEST_CASE("a file that cannot be taken over says where and why, and nothing is written") {
  Stick stick;
  stick.kiosk.record_counts = failure(
      ErrorKind::BadInput, "\"femal\" is none of female, male, unknown. Nothing was taken over.",
      "animals.csv, line 3, column sex");
  stick.look_into();
  CHECK(stick.kiosk.notice() ==
        "animals.csv, line 3, column sex: \"femal\" is none of female, "
        "male, unknown. Nothing was taken over.");
  stick.kiosk.does(BringIn{});
  CHECK_FALSE(stick.kiosk.writes_a_file);
}

TEST_CASE("a full card says how much is written all the same") {
  Stick stick;
  stick.look_into();
  stick.kiosk.does(BringIn{});
  stick.kiosk.does(kiosk::BroughtIn{{10, 23}, Error{ErrorKind::Full, "The card is full.", {}}, {}});
  CHECK(stick.kiosk.notice() ==
        "10 of 23 entries are in the log; the same brought in again goes on there. The rest: The "
        "card is full.");
}

TEST_CASE("a file that went bad after it was looked at says where") {
  Stick stick;
  stick.look_into();
  stick.kiosk.does(BringIn{});
  stick.kiosk.does(kiosk::BroughtIn{
      {},
      Error{ErrorKind::BadInput, "There is no such day. Nothing was taken over.", "a.csv, line 2"},
      {}});
  CHECK(stick.kiosk.notice() == "a.csv, line 2: There is no such day. Nothing was taken over.");
}

TEST_CASE("stopped before anything was written, it says that") {
  Stick stick;
  stick.look_into();
  stick.kiosk.does(BringIn{});
  stick.kiosk.does(kiosk::BroughtIn{{0, 23}, {}, {}});
  CHECK(stick.kiosk.notice() == "Stopped. Nothing was taken over.");
}

TEST_CASE("a file without anything new is not brought in, and none found says where to put one") {
  Stick stick;
  stick.kiosk.record_counts = RecordCounts{0, 0, 0, 12};
  stick.look_into();
  CHECK(stick.view().words ==
        "There is nothing new in animals.csv. 12 of its rows are in the log already.");
  stick.kiosk.does(BringIn{});
  CHECK_FALSE(stick.kiosk.writes_a_file);
  stick.kiosk.record_files.clear();
  stick.kiosk.does(LookForFiles{});
  CHECK(stick.view().words.find("bring-in beside the log") != std::string::npos);
}

TEST_CASE("a file goes on being written while somebody scans, and is there when one comes back") {
  Stick stick;
  stick.look_into();
  stick.kiosk.does(BringIn{});
  stick.kiosk.does(PartBroughtIn{{10, 23}});
  stick.kiosk.does(Show{ScreenName::Round});
  stick.kiosk.does(Show{ScreenName::BringIn});
  CHECK(stick.view().key == "stop here");
  stick.look_into();
  CHECK(stick.view().key == "stop here");
}

// The real program, run as a keeper would.

#include <sys/wait.h>

#include <algorithm>
#include <cstdlib>

#include "core/store/sqlite_log.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;
namespace fs = std::filesystem;

namespace {

struct Said {
  int code = -1;
  std::string out;
  std::string complaint;
};

struct Table {
  TemporaryFolder folder;

  // `words` are the shell's; %/ stands for the folder.
  [[nodiscard]] Said run(std::string words) const {
    for (auto at = words.find("%/"); at != std::string::npos; at = words.find("%/"))
      words.replace(at, 1, folder.path().string());
    const std::string command = "XDG_DATA_HOME=" + (folder / "data").string() +
                                " " RACKSIDE_BIN_DIR "/rackside-log " + words + " >" +
                                (folder / "out").string() + " 2>" + (folder / "err").string();
    const int status = std::system(command.c_str());
    return {WEXITSTATUS(status), read_file(folder / "out"), read_file(folder / "err")};
  }
  void check_complaint(const std::string& words, int code, const std::string& part) const {
    const Said said = run(words);
    INFO(words << " -> " << said.complaint);
    CHECK(said.code == code);
    CHECK(said.complaint.find(part) != std::string::npos);
    CHECK(said.out.empty());
    if (code == 1) CHECK(std::ranges::count(said.complaint, '\n') == 1);
  }
  [[nodiscard]] std::string file(const std::string& name) const { return read_file(folder / name); }
  void write(const std::string& name, const std::string& text) const {
    write_file(folder / name, text);
  }
};

const std::string animals =
    "animal,species,acquired\r\nhh-1,Haplocosmia himalayana,2024-02-01\r\n"
    "hh-2,Haplocosmia himalayana,2024-02-01\r\n";
const std::string events =
    "when,animal,event,outcome\r\n2024-03-01,hh-1,offered,took\r\n"
    "2024-03-08T20:15+01:00,hh-1,offered,refused\r\n2024-03-08,hh-2,misted,\r\n";

}  // namespace

TEST_CASE("records go in, come out, go into another log, and come out the same") {
  const Table table;
  table.write("animals.csv", animals);
  table.write("events.csv", events);
  const Said in = table.run("--log %/log.db import --animals %/animals.csv --events %/events.csv");
  INFO(in.complaint);
  CHECK(in.code == 0);
  CHECK(in.out == "Taken over: 2 animals, 2 new tubs, 3 events.\n");
  const Said out = table.run("export --log %/log.db --animals %/a.csv --events %/e.csv");
  CHECK(out.code == 0);
  CHECK(out.out.find("a.csv: 2 animals.") != std::string::npos);
  CHECK(table.run("--log %/second.db import --animals %/a.csv --events %/e.csv").code == 0);
  CHECK(table.run("--log %/second.db export --animals %/a2.csv --events %/e2.csv").code == 0);
  CHECK(table.file("e.csv").find("2024-03-08T20:15:00+01:00,hh-1,offered,refused") !=
        std::string::npos);
  CHECK(table.file("a2.csv") == table.file("a.csv"));
  CHECK(table.file("e2.csv") == table.file("e.csv"));
  CHECK(table.run("--log %/log.db import --animals %/a.csv --events %/e.csv").out ==
        "Taken over: 0 animals, 0 new tubs, 0 events.\n"
        "In the log already: 2 animals, 3 events.\n");
}

TEST_CASE("without a name the log is in the data folder") {
  const Table table;
  table.write("animals.csv", animals);
  CHECK(table.run("import --animals %/animals.csv").code == 0);
  CHECK(fs::exists(table.folder / "data/rackside/log.db"));
}

TEST_CASE("a bad row ends with one sentence that names its place, and nothing was taken over") {
  const Table table;
  table.write("animals.csv", animals);
  table.write("events.csv", events + "2024-03-09,hh-3,misted,\r\n");
  table.check_complaint("--log %/log.db import --animals %/animals.csv --events %/events.csv", 1,
                        "events.csv, line 5, column animal: There is no animal \"hh-3\"");
  CHECK(table.run("--log %/log.db check").out.find("0 events") == 0);
}

TEST_CASE("two logs merged either way round say the same") {
  const Table table;
  table.write("animals.csv", animals);
  table.write("more.csv", "animal\r\nhh-3\r\n");
  table.write("events.csv", events);
  REQUIRE(table.run("--log %/one.db import --animals %/animals.csv --events %/events.csv").code ==
          0);
  REQUIRE(table.run("--log %/two.db import --animals %/more.csv").code == 0);
  CHECK(table.run("--log %/one.db merge --from %/two.db").out.find("2 events taken over") == 0);
  CHECK(table.run("--log %/two.db merge --from %/one.db").out.find("7 events taken over") == 0);
  CHECK(table.run("--log %/two.db merge --from %/one.db").out.find("0 events taken over") == 0);
  REQUIRE(table.run("--log %/one.db export --animals %/a1.csv --events %/e1.csv").code == 0);
  REQUIRE(table.run("--log %/two.db export --animals %/a2.csv --events %/e2.csv").code == 0);
  CHECK(table.file("a1.csv") == table.file("a2.csv"));
  CHECK(table.file("e1.csv") == table.file("e2.csv"));
  table.check_complaint("--log %/one.db merge --from %/one.db", 1, "the same log");
}

TEST_CASE("a log is checked and copied, and the copy is as good") {
  const Table table;
  table.write("animals.csv", animals);
  REQUIRE(table.run("--log %/log.db import --animals %/animals.csv").code == 0);
  CHECK(table.run("--log %/log.db check --thorough").out ==
        "4 events of 1 kiosk.\nEverything in the log can be read, and nothing is missing.\n");
  CHECK(table.run("--log %/log.db backup --to %/copy.db").code == 0);
  CHECK(table.run("--log %/copy.db check").out.find("4 events of 1 kiosk.") == 0);
  table.check_complaint("--log %/log.db backup --to %/copy.db", 1, "There is already a file");
}

TEST_CASE("pictures go with a copy of the log, and what keeps them back is told beside it") {
  const Table table;
  table.write("animals.csv", animals);
  REQUIRE(table.run("--log %/log.db import --animals %/animals.csv").code == 0);
  fs::create_directories(table.folder / "log.db.pictures");
  table.write("log.db.pictures/one.png", "a picture");
  const Said said = table.run("--log %/log.db backup --to %/copy.db");
  CHECK(said.code == 0);
  CHECK(said.out.find("and was read back. 1 picture beside it, in ") != std::string::npos);
  CHECK(table.file("copy.db.pictures/one.png") == "a picture");
  table.write("other.db.pictures", "no folder");
  table.check_complaint("--log %/log.db backup --to %/other.db", 1,
                        "was read back. Its pictures are not all beside it: ");
  CHECK(table.run("--log %/other.db check").code == 0);
}

TEST_CASE("wrong words end with code 2 and say what is wrong") {
  const Table table;
  table.check_complaint("", 2, "subcommand");
  table.check_complaint("--colour blue check", 2, "--colour");
  table.check_complaint("check --colour", 2, "--colour");
  table.check_complaint("levitate", 2, "subcommand");
  table.check_complaint("import", 2, "--animals or --events");
  table.check_complaint("export", 2, "--animals or --events");
  table.check_complaint("merge", 2, "--from");
  table.check_complaint("backup", 2, "--to");
  table.check_complaint("check --log", 2, "--log");
}

TEST_CASE("every subcommand explains itself") {
  const Table table;
  const Said whole = table.run("--help");
  CHECK(whole.code == 0);
  for (const char* command : {"import", "export", "merge", "check", "backup"}) {
    CHECK(whole.out.find(command) != std::string::npos);
    const Said one = table.run(std::string(command) + " --help");
    CHECK(one.code == 0);
    CHECK(one.complaint.empty());
  }
  CHECK(table.run("import --help").out.find("--events") != std::string::npos);
}

TEST_CASE("what cannot be done ends with code 1 and one sentence") {
  const Table table;
  table.write("notes.txt", "feed on Tuesday");
  table.write("animals.csv", animals);
  table.write("empty.csv", "");
  table.check_complaint("--log %/none.db export --animals %/a.csv", 1, "There is no log at");
  table.check_complaint("--log %/none.db check", 1, "There is no log at");
  table.check_complaint("--log %/notes.txt check", 1, "is not a Rackside log");
  table.check_complaint("--log %/notes.txt import --animals %/animals.csv", 1,
                        "not a Rackside log");
  table.check_complaint("--log %/no/log.db import --animals %/animals.csv", 1,
                        "There is no folder");
  table.check_complaint("--log %/log.db import --animals %/none.csv", 1, "There is no file");
  table.check_complaint("--log %/log.db import --animals %/", 1, "cannot be read");
  table.check_complaint("--log %/log.db import --animals %/empty.csv", 1, "The file is empty");
  REQUIRE(table.run("--log %/log.db import --animals %/animals.csv").code == 0);
  table.check_complaint("--log %/log.db export --animals %/no/a.csv", 1, "cannot be written");
  CHECK(table.file("notes.txt") == "feed on Tuesday");
}

TEST_CASE("an export that fails leaves the files that were there") {
  const Table table;
  table.write("animals.csv", animals);
  REQUIRE(table.run("--log %/log.db import --animals %/animals.csv").code == 0);
  table.write("a.csv", "the old one");
  CHECK(table.run("--log %/log.db export --animals %/a.csv --events %/no/e.csv").code == 1);
  CHECK(table.file("a.csv") == "the old one");
  CHECK_FALSE(fs::exists(table.folder / "a.csv.unfinished"));
}

TEST_CASE("the programs for the log work while a kiosk has it open") {
  const Table table;
  table.write("animals.csv", animals);
  table.write("events.csv", events);
  const auto kiosk = SqliteLog::open(table.folder / "log.db", Access::Write).value();
  CHECK(table.run("--log %/log.db import --animals %/animals.csv --events %/events.csv").code == 0);
  REQUIRE(kiosk->append({make_event(1, 1, animal_number(1), AnimalAdded{.key = "hh-9"})}, {}));
  CHECK(table.run("--log %/log.db export --animals %/a.csv").code == 0);
  CHECK(table.file("a.csv").find("hh-9") != std::string::npos);
  CHECK(table.run("--log %/log.db check").code == 0);
  CHECK(table.run("--log %/log.db backup --to %/copy.db").code == 0);
}

// The real program, run as a keeper would.

#include <fcntl.h>
#include <signal.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>

#include "core/collection/collection.hpp"
#include "core/store/sqlite_log.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
namespace fs = std::filesystem;

namespace {

constexpr const char* program = RACKSIDE_BIN_DIR "/rackside-labels";

struct Said {
  int code = -1;
  std::string out;
  std::string complaint;
};

struct Table {
  TemporaryFolder folder;

  // `words` are the shell's; %/ stands for the folder.
  [[nodiscard]] Said run(std::string words, const std::string& before = "") const {
    for (auto at = words.find("%/"); at != std::string::npos; at = words.find("%/"))
      words.replace(at, 1, folder.path().string());
    const std::string command = "cd " + folder.path().string() +
                                " && XDG_DATA_HOME=" + (folder / "data").string() + " " + before +
                                " " + program + " " + words + " >" + (folder / "said").string() +
                                " 2>" + (folder / "complaint").string();
    const int status = std::system(command.c_str());
    return {WEXITSTATUS(status), read_file(folder / "said"), read_file(folder / "complaint")};
  }
  [[nodiscard]] Said batch(int count, const std::string& more = "") const {
    return run(
        "--log %/log.db batch --species 'Orphnaecus philippinus' --source 'sac 7' --rack A "
        "--shelf 1 --position 1 --per-shelf 30 --count " +
        std::to_string(count) + " " + more);
  }
  [[nodiscard]] Collection collection() const {
    const auto log = SqliteLog::open(folder / "log.db", Access::Read);
    if (!log) return {};
    return fold_collection((*log)->read_kinds(roster_kinds()).value());
  }
  [[nodiscard]] std::ptrdiff_t printed() const {
    const Collection all = collection();
    return std::ranges::count_if(
        all.enclosures, [](const auto& tub) { return tub.second.label_printed.has_value(); });
  }
  void script(const std::string& name, const std::string& body) const {
    write_file(folder / name, "#!/bin/sh\n" + body + "\n");
    fs::permissions(folder / name, fs::perms::owner_all);
  }
};

bool one_line(const std::string& text) { return std::ranges::count(text, '\n') == 1; }

}  // namespace

TEST_CASE("help is complete on the program and on every subcommand") {
  const Table table;
  const Said help = table.run("--help");
  CHECK(help.code == 0);
  for (const std::string name : {"sheet", "batch", "cards", "shelves", "badges", "proof", "read",
                                 "calibrate", "sheets", "printers"}) {
    CHECK(help.out.find("\n  " + name + " ") != std::string::npos);
    const Said own = table.run(name + " --help");
    CHECK(own.code == 0);
    CHECK(own.out.find("rackside-labels " + name) != std::string::npos);
  }
}

TEST_CASE("a wrong option is one clear line and exit code 2") {
  const Table table;
  for (const std::string words :
       {"", "--colour", "sheet --shelf 3", "sheet --all --rack A", "batch --count three", "sheet",
        "read", "cards --paper a3", "sheet --all --dpi 7", "paint"}) {
    const Said said = table.run(words);
    INFO(words << ": " << said.complaint);
    CHECK(said.code == 2);
    CHECK(one_line(said.complaint));
    CHECK(said.out.empty());
  }
}

TEST_CASE("a batch is made, printed, read back, and its labels are known to be printed") {
  const Table table;
  const Said made = table.batch(70, "--instar 2 --date 2031-04-09");
  INFO(made.complaint);
  REQUIRE(made.code == 0);
  CHECK(made.out.find("70 labels on 2 pages: labels.pdf") != std::string::npos);
  CHECK(table.printed() == 70);
  const Said read = table.run("read labels.pdf");
  CHECK(read.code == 0);
  CHECK(std::ranges::count(read.out, '\n') == 70);
  for (const auto& [code, tub] : table.collection().enclosures)
    CHECK(read.out.find(std::string(code.text()) + "\ttub\t") != std::string::npos);
}

TEST_CASE("a shelf is printed again, from a used sheet, as pictures") {
  const Table table;
  REQUIRE(table.batch(40).code == 0);
  const Said said =
      table.run("sheet --log %/log.db --rack A --shelf 2 --start 13,4 --dpi 203 --out shelf.png");
  CHECK(said.code == 0);
  CHECK(said.out.find("10 labels on 2 pages: shelf-1.png, shelf-2.png") != std::string::npos);
  const Said read = table.run("read shelf-1.png shelf-2.png --json");
  CHECK(read.code == 0);
  CHECK(std::ranges::count(read.out, '\n') == 2);
  CHECK(read.out.find("\"what\":\"tub\"") != std::string::npos);
}

TEST_CASE("proof tells every label and that it estimates") {
  const Table table;
  REQUIRE(table.batch(3).code == 0);
  const Said said = table.run("--log %/log.db proof --all");
  CHECK(said.code == 0);
  CHECK(said.out.find("3 of 3 labels read in every trial") != std::string::npos);
  CHECK(said.out.find("no verifier's measurement") != std::string::npos);
}

TEST_CASE("nothing is marked as printed when nothing came out") {
  const Table table;
  table.script("lpstat", "echo rack-room");
  table.script("lp", "echo 'lp: Error - The printer or class does not exist.' >&2; exit 1");
  const std::string path = "PATH=" + table.folder.path().string() + ":$PATH";
  fs::create_symlink("/dev/full", table.folder / "full.pdf");
  REQUIRE(table.batch(5, "--out full.pdf").code == 1);
  CHECK(table.collection().animals.size() == 5);
  CHECK(table.printed() == 0);
  const Said vanished = table.run("--log %/log.db sheet --all --printer rack-room", path);
  CHECK(vanished.code == 1);
  CHECK(vanished.complaint.find("nothing is marked as printed") != std::string::npos);
  CHECK(table.printed() == 0);
  table.script("lp", "cat > paper.pdf; echo 'request id is rack-room-1 (0 file(s))'");
  CHECK(table.run("--log %/log.db sheet --not-stuck-on --printer rack-room", path).code == 0);
  CHECK(table.printed() == 5);
  CHECK(table.run("read paper.pdf").code == 0);
}

TEST_CASE("a batch that cannot be is refused in one line, and the log stays as it was") {
  const Table table;
  REQUIRE(table.batch(2).code == 0);
  write_file(table.folder / "label-sheets.toml",
             "[[sheet]]\nname = \"tiny\"\nroll = 6\nlength = 30\n");
  for (const std::string words :
       {"--count 0", "--count 10000", "--count 3 --sheet none", "--count 3 --start 900",
        "--count 3 --out labels.doc", "--count 3 --date 2031-02-30", "--count 3 --offset 80,0",
        "--count 3 --offset wide", "--count 3 --sheet tiny"}) {
    const Said said = table.run("--log %/log.db batch --species Nhandu " + words);
    INFO(words << ": " << said.complaint);
    CHECK(said.code == 1);
    CHECK(one_line(said.complaint));
  }
  CHECK(table.collection().animals.size() == 2);
}

TEST_CASE("a batch that is killed at any moment is in the log whole or not at all") {
  const Table table;
  constexpr int count = 400;
  std::size_t before = 0;
  int whole = 0;
  int nothing = 0;
  for (int round = 0; round < 16; ++round) {
    const std::string log = (table.folder / "log.db").string();
    const std::string out = (table.folder / "labels.pdf").string();
    const std::string many = std::to_string(count);
    std::vector<const char*> words{program,     "--log",     log.c_str(), "batch",
                                   "--species", "Nhandu",    "--count",   many.c_str(),
                                   "--out",     out.c_str(), nullptr};
    posix_spawn_file_actions_t quiet;
    posix_spawn_file_actions_init(&quiet);
    posix_spawn_file_actions_addopen(&quiet, STDOUT_FILENO, "/dev/null", O_WRONLY, 0);
    pid_t child = 0;
    REQUIRE(posix_spawn(&child, program, &quiet, nullptr, const_cast<char**>(words.data()),
                        environ) == 0);
    posix_spawn_file_actions_destroy(&quiet);
    usleep(static_cast<useconds_t>(1500 * round * round));
    kill(child, SIGKILL);
    waitpid(child, nullptr, 0);
    const std::size_t now = table.collection().animals.size();
    CHECK((now == before || now == before + count));
    ++(now == before ? nothing : whole);
    before = now;
  }
  CHECK(nothing > 0);
  CHECK(whole > 0);
}

TEST_CASE("files without a code of ours give exit code 1") {
  const Table table;
  write_file(table.folder / "page.pgm", "P5\n2 2\n255\nabcd");
  REQUIRE(table.run("cards").code == 0);
  CHECK(table.run("read cards.pdf").code == 0);
  const Said said = table.run("read cards.pdf page.pgm none.png");
  CHECK(said.code == 1);
  CHECK(said.out.find("action card: refused") != std::string::npos);
  CHECK(said.out.find("page.pgm\t-\tno readable code of ours") != std::string::npos);
}

TEST_CASE("a user's own sheets and offsets stand beside the log") {
  const Table table;
  REQUIRE(table.batch(2).code == 0);
  write_file(table.folder / "label-sheets.toml",
             "[[sheet]]\nname = \"mine\"\nroll = 20\nlength = 30\n");
  CHECK(table.run("--log %/log.db sheets").out.find("mine") != std::string::npos);
  CHECK(table.run("--log %/log.db sheet --all --sheet mine").code == 0);
  CHECK(table.run("--log %/log.db calibrate --sheet mine --remember 0.5,-0.3").code == 0);
  CHECK(table.run("--log %/log.db calibrate --sheet none --remember 0.5,-0.3").code == 1);
  CHECK(read_file(table.folder / "label-offsets.toml").find("right = 0.5") != std::string::npos);
  write_file(table.folder / "label-sheets.toml", "[[sheet]]\nname = \"mine\"\nroll = 20\n");
  const Said said = table.run("--log %/log.db sheets");
  CHECK(said.code == 1);
  CHECK(said.complaint.find("line 1") != std::string::npos);
}

TEST_CASE("a log that is not there or no log is told, and nothing is made") {
  const Table table;
  CHECK(table.run("--log %/none.db sheet --all").code == 1);
  CHECK_FALSE(fs::exists(table.folder / "none.db"));
  write_file(table.folder / "words.db", "these are no records, only words and more words");
  const Said said = table.run("--log %/words.db sheet --all");
  CHECK(said.code == 1);
  CHECK(one_line(said.complaint));
}

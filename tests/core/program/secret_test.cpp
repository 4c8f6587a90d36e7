// The keeper's PIN stays in its own file: not in the log, not in what the program writes.

#include "core/pin_file/pin_file.hpp"
#include "tests/core/program/kept_log.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

// Salt and hash of the PIN are base64; eight characters in a row are one in 64^8 by chance.
constexpr std::size_t telling = 8;

std::vector<std::string> secrets_in(const std::string& pin_file) {
  const auto begin = pin_file.find("$argon2id$");
  REQUIRE(begin != std::string::npos);
  const std::string hash = pin_file.substr(begin, pin_file.find('\n', begin) - begin);
  const auto salt = hash.find('$', hash.find("m=")) + 1;
  REQUIRE(hash.size() > salt + 60);
  std::vector<std::string> pieces;
  for (std::size_t at = salt; at + telling <= hash.size(); ++at)
    pieces.push_back(hash.substr(at, telling));
  return pieces;
}

bool tells(const std::string& text, const std::vector<std::string>& secrets) {
  return std::ranges::any_of(
      secrets, [&](const auto& piece) { return text.find(piece) != std::string::npos; });
}

struct GuardedLog : KeptLog {
  std::filesystem::path pin_file = pin_path(folder / "log.db");

  GuardedLog() {
    PinFile pin(pin_file, [] { return Uptime{}; });
    REQUIRE(pin.set("48271936"));
    REQUIRE(pin.check("48271936")->verdict == PinVerdict::Right);
    REQUIRE(run("cover --by Ines plan --who Noor --from 2124-07-01 --to 2124-07-09") == 0);
    REQUIRE(run("cover --by Ines contact keeper Ines 0170-1") == 0);
  }
};

}  // namespace

TEST_CASE("no export, no line of the log and nothing that is printed holds a piece of the PIN") {
  const GuardedLog log;
  const auto secrets = secrets_in(read_file(log.pin_file));
  // The search finds what is there.
  REQUIRE(tells("a note: " + secrets.back(), secrets));
  for (const std::string words :
       {"export --animals " + log.path("a.csv") + " --events " + log.path("e.csv"),
        "backup --to " + log.path("copy.db"), std::string("check"), std::string("cover list"),
        std::string("today --as-of 2024-03-20 --json"),
        std::string("forecast --as-of 2024-03-20 --json")}) {
    INFO(words);
    REQUIRE(log.run(words) == 0);
    CHECK_FALSE(tells(log.said() + log.complaint(), secrets));
  }
  // Everything beside the PIN's own file, byte by byte: the log and its copy, the two tables.
  std::size_t looked_at = 0;
  for (const auto& entry : std::filesystem::directory_iterator(log.folder.path())) {
    if (entry.path() == log.pin_file) continue;
    INFO(entry.path());
    const std::string bytes = read_file(entry.path());
    CHECK_FALSE(tells(bytes, secrets));
    CHECK(bytes.find("48271936") == std::string::npos);
    looked_at += bytes.size();
  }
  CHECK(looked_at > 10'000);
}

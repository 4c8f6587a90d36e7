#include "core/pin_file/pin_file.hpp"

#include <sys/stat.h>

#include <chrono>

#include "core/store/sqlite_log.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace std::chrono_literals;

namespace {

// A machine that is switched on and off; each time its uptime begins anew.
struct Machine {
  TemporaryFolder folder;
  std::filesystem::path path = pin_path(folder / "log.db");
  Uptime uptime{0};

  PinFile start() {
    uptime = 0s;
    return PinFile(path, [this] { return uptime; });
  }
};

}  // namespace

TEST_CASE("the PIN that was set is right, any other wrong, also after a restart") {
  Machine machine;
  PinFile pin = machine.start();
  CHECK_FALSE(pin.is_set().value());
  CHECK(pin.check("7294").error().kind == ErrorKind::NotFound);
  REQUIRE(pin.set("7294"));
  CHECK(pin.is_set().value());
  CHECK(pin.check("7294")->verdict == PinVerdict::Right);
  CHECK(pin.check("7295")->verdict == PinVerdict::Wrong);
  CHECK(pin.check("72940")->verdict == PinVerdict::Wrong);
  PinFile later = machine.start();
  CHECK(later.check("7294")->verdict == PinVerdict::Right);
}

TEST_CASE("a hash made by another program with the same standard is understood") {
  // The reference implementation of Argon2 (P-H-C/phc-winner-argon2, src/test.c, Argon2id): the
  // password "password" with the salt "somesalt", two passes over 64 MiB. From memory, and right or
  // this would fail.
  Machine machine;
  write_file(machine.path,
             "rackside pin 1\n$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$"
             "CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc\nwrong 0\n");
  PinFile pin = machine.start();
  CHECK(pin.check("password")->verdict == PinVerdict::Right);
  CHECK(pin.check("passwore")->verdict == PinVerdict::Wrong);
}

TEST_CASE("the file holds a salted Argon2id hash, for its owner's eyes only, and no PIN") {
  Machine machine;
  PinFile pin = machine.start();
  REQUIRE(pin.set("48271936"));
  const std::string first = read_file(machine.path);
  // RFC 9106, section 4, second choice: three passes over 64 MiB (65536 KiB).
  CHECK_THAT(first, Catch::Matchers::Contains("$argon2id$v=19$m=65536,t=3,p=1$"));
  CHECK(first.find("48271936") == std::string::npos);
  struct stat found {};
  REQUIRE(stat(machine.path.c_str(), &found) == 0);
  CHECK((found.st_mode & 0777) == 0600);
  REQUIRE(pin.set("48271936"));
  CHECK(read_file(machine.path) != first);
}

TEST_CASE("wrong tries outlive a restart, and the wait is not shortened by it") {
  Machine machine;
  PinFile pin = machine.start();
  REQUIRE(pin.set("7294"));
  for (int i = 0; i < 4; ++i) {
    machine.uptime += 1h;
    CHECK(pin.check("7000")->verdict == PinVerdict::Wrong);
  }
  machine.uptime += 59s;
  CHECK(pin.check("7294") == PinAnswer{PinVerdict::Wait, 1s});
  PinFile later = machine.start();
  CHECK(later.check("7294") == PinAnswer{PinVerdict::Wait, 60s});
  machine.uptime = 60s;
  CHECK(later.check("7001") == PinAnswer{PinVerdict::Wrong, 120s});
  machine.uptime += 120s;
  CHECK(later.check("7294")->verdict == PinVerdict::Right);
  CHECK(machine.start().check("7002") == PinAnswer{PinVerdict::Wrong, 0s});
}

TEST_CASE("a try is counted before it is made, so that pulling the plug saves nobody a wait") {
  Machine machine;
  PinFile pin = machine.start();
  REQUIRE(pin.set("7294"));
  CHECK(pin.check("7000")->verdict == PinVerdict::Wrong);
  CHECK_THAT(read_file(machine.path), Catch::Matchers::EndsWith("wrong 1\n"));
}

TEST_CASE("a file that is damaged lets nobody in and does not count as no PIN") {
  for (const char* content : {"", "rackside pin 1\n", "rackside pin 1\n7294\nwrong 0\n",
                              "rackside pin 1\n$argon2id$v=19$\nwrong\n", "wrong 0\n"}) {
    Machine machine;
    write_file(machine.path, content);
    PinFile pin = machine.start();
    INFO(content);
    CHECK(pin.is_set().error().kind == ErrorKind::Broken);
    CHECK(pin.check("7294").error().kind == ErrorKind::Broken);
  }
}

TEST_CASE("a try that cannot be counted is not made") {
  Machine machine;
  PinFile pin = machine.start();
  REQUIRE(pin.set("7294"));
  // A folder stands where the new file would be written.
  const auto in_the_way = machine.path.string() + ".part" + std::to_string(getpid());
  std::filesystem::create_directory(in_the_way);
  CHECK_FALSE(pin.check("7294"));
  std::filesystem::remove(in_the_way);
  CHECK(pin.check("7294")->verdict == PinVerdict::Right);
}

TEST_CASE("setting a PIN leaves the log as it was: a stolen log does not hold it") {
  Machine machine;
  const auto log_path = machine.folder / "log.db";
  {
    auto log = SqliteLog::open(log_path, Access::Write).value();
    Draft draft{.id = event_number(1),
                .by = "Ines",
                .when = at_hour(1),
                .animal = {},
                .enclosure = {},
                .details = PersonAdded{"Ines", Role::Keeper, {}},
                .note = {}};
    REQUIRE(log->append({draft}, at_hour(1).moment.utc));
  }
  const std::string before = read_file(log_path);
  PinFile pin = machine.start();
  REQUIRE(pin.set("60315"));
  CHECK(pin.check("60315")->verdict == PinVerdict::Right);
  CHECK(read_file(log_path) == before);
  CHECK(before.find("argon2") == std::string::npos);
}

#include "kiosk/console/input_wait.hpp"

#include <linux/netlink.h>
#include <sys/socket.h>

#include <ctime>
#include <thread>

#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;
using namespace std::chrono_literals;

TEST_CASE("of a program's open files the input devices and the news of devices are found") {
  const Descriptor news(socket(AF_NETLINK, SOCK_RAW | SOCK_CLOEXEC, NETLINK_KOBJECT_UEVENT));
  const Descriptor other(socket(AF_UNIX, SOCK_DGRAM | SOCK_CLOEXEC, 0));
  REQUIRE(news.open());
  const auto found = input_descriptors();
  CHECK(std::ranges::count(found, news.get()) == 1);
  CHECK(std::ranges::count(found, other.get()) == 0);

  const TemporaryFolder files;
  std::filesystem::create_symlink("/dev/input/event3", files / "7");
  std::filesystem::create_symlink("/dev/null", files / "8");
  CHECK(input_descriptors(files.path()) == std::vector<int>{7});
}

TEST_CASE("the bell ends a wait, also one that has not begun, and patience does too") {
  InputWait wait;
  wait.ring();
  wait.wait(std::nullopt);
  std::thread ringer([&] {
    std::this_thread::sleep_for(20ms);
    wait.ring();
  });
  wait.wait(std::nullopt);
  ringer.join();
  const auto before = std::chrono::steady_clock::now();
  wait.wait(30ms);
  CHECK(std::chrono::steady_clock::now() - before >= 30ms);
}

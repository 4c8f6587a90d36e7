// The camera behind the screens: watched, changed and left while it runs.

#include "kiosk/shell/camera_eye.hpp"

#include "kiosk/frames/test_pattern.hpp"
#include "tests/fakes/mailbox.hpp"
#include "tests/fakes/scripted_frames.hpp"
#include "tests/frame.hpp"
#include "tests/generators/frames.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

struct Label {
  Code code;
  GreyImage image;

  explicit Label(std::uint64_t seed) : code(at(seed)) {
    Random random(seed);
    image = photograph(symbol_of(std::string(code.text()), 1), {}, random).image;
  }
  static Code at(std::uint64_t seed) {
    Random random(seed);
    return random_code(random);
  }
};

Settings using_camera(std::string path, Aim aim = {}) {
  Settings settings;
  settings.camera = std::move(path);
  settings.aim = aim;
  return settings;
}

// Every camera is a script that shows `label` for ever.
struct Machine {
  Mailbox mailbox;
  Label label{1};
  std::atomic<int> opened = 0;
  CameraEye eye{mailbox.queue, [this](const std::string& path) { return open(path); }};

  std::unique_ptr<FrameSource> open(const std::string& path) {
    if (path.empty()) return nullptr;
    ++opened;
    auto source = std::make_unique<ScriptedFrames>();
    for (int i = 0; i < 1000; ++i) source->push(label.image);
    return source;
  }
  // The next sight of this camera.
  CameraSight sight_of(const std::string& camera) {
    for (;;)
      if (auto seen = mailbox.wait_for<CameraSeen>(); seen.sight.camera == camera)
        return seen.sight;
  }
};

}  // namespace

TEST_CASE("a code before the chosen camera is told") {
  Machine machine;
  machine.eye.follow(using_camera("one"));
  const auto read = machine.mailbox.wait_for<CodeRead>();
  CHECK(read.text == machine.label.code.text());
  CHECK(read.by == ReadBy::Camera);
}

TEST_CASE("while somebody watches every picture comes with a new number and what was read in it") {
  Machine machine;
  machine.eye.watch(Watching::EveryPicture);
  machine.eye.follow(using_camera("one"));
  const CameraSight first = machine.sight_of("one"), second = machine.sight_of("one");
  CHECK(first.picture > 0);
  CHECK(second.picture > first.picture);
  CHECK(first.code == machine.label.code);
  CHECK(first.width == machine.label.image.width);
  const auto picture = machine.eye.newest_picture();
  REQUIRE(picture);
  CHECK(*picture == machine.label.image);
}

TEST_CASE("nobody watches: no pictures are handed on or kept") {
  Machine machine;
  machine.eye.watch(Watching::EveryPicture);
  machine.eye.follow(using_camera("one"));
  std::ignore = machine.sight_of("one");
  machine.eye.watch(Watching::Codes);
  // Two cameras later everything from before is through.
  machine.eye.follow(using_camera("two"));
  while (machine.mailbox.wait_for<CodeRead>().text != machine.label.code.text()) {
  }
  for (const Intent& intent : machine.mailbox.queue.take())
    if (const auto* seen = std::get_if<CameraSeen>(&intent)) CHECK(seen->sight.camera != "two");
}

TEST_CASE("another camera takes over, and none ends the pictures") {
  Machine machine;
  machine.eye.watch(Watching::EveryPicture);
  machine.eye.follow(using_camera("one"));
  std::ignore = machine.sight_of("one");
  machine.eye.follow(using_camera("two"));
  std::ignore = machine.sight_of("two");
  machine.eye.follow(using_camera(""));
  machine.eye.follow(using_camera("three"));
  std::ignore = machine.sight_of("three");
  CHECK(machine.opened == 3);
}

TEST_CASE("an aim that moves does not start the camera anew") {
  Machine machine;
  machine.eye.watch(Watching::EveryPicture);
  machine.eye.follow(using_camera("one"));
  CHECK(machine.sight_of("one").code);
  machine.eye.follow(using_camera("one", {0.1, 0.1, 0.2}));
  while (machine.sight_of("one").code) {
  }
  CHECK(machine.opened == 1);
}

TEST_CASE("pictures from a folder are looked at until a camera is chosen") {
  Machine machine;
  machine.eye.watch(Watching::EveryPicture);
  machine.eye.look_through(std::make_unique<TestPattern>(64, 48), using_camera(""));
  CHECK(machine.sight_of("").source == "test pattern");
  machine.eye.follow(using_camera("", {0.2, 0.2, 0.5}));
  CHECK(machine.sight_of("").source == "test pattern");
  machine.eye.follow(using_camera("one"));
  CHECK(machine.sight_of("one").source == "a script");
}

TEST_CASE("cameras change and are watched in any order without a stumble") {
  Machine machine;
  for (int i = 0; i < 40; ++i) {
    machine.eye.follow(using_camera(i % 3 == 0 ? "" : std::to_string(i)));
    machine.eye.watch(i % 2 == 0 ? Watching::EveryPicture : Watching::Codes);
  }
  machine.eye.watch(Watching::EveryPicture);
  machine.eye.follow(using_camera("last"));
  CHECK(machine.sight_of("last").picture > 0);
}

#include "kiosk/view/camera_page_view.hpp"

#include <algorithm>

#include "labels/reader/aim_box.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

constexpr const char* shelf_eye = "/dev/v4l/by-id/usb-Shelf_Eye_720p-video-index0";

Model looking() {
  Model model;
  model.screen = ScreenName::Camera;
  model.settings.camera = shelf_eye;
  model.camera = CameraPage{};
  model.camera->sight = CameraSight{.camera = shelf_eye, .source = "camera Shelf Eye"};
  model.camera->sight->picture = 1;
  model.camera->sight->width = 1280;
  model.camera->sight->height = 720;
  return model;
}

Aim after(Model model, const std::string& word, int taps = 1) {
  for (int tap = 0; tap < taps; ++tap) {
    const auto keys = view_camera(model).aim_keys;
    const auto key = std::ranges::find(keys, word, &AimKey::word);
    REQUIRE(key != keys.end());
    model.settings = std::get<SetUp>(key->intent).settings;
  }
  return model.settings.aim;
}

std::vector<std::string> words_of(const std::vector<SetupChoice>& choices) {
  std::vector<std::string> words;
  for (const auto& choice : choices) words.push_back(choice.word);
  return words;
}

}  // namespace

TEST_CASE("what the reader makes of the picture is said in a sentence") {
  Model model = looking();
  CameraSight& sight = *model.camera->sight;
  CHECK(view_camera(model).says == "Hold a tub's label into the frame.");
  sight.unread.push_back({});
  CHECK(view_camera(model).says == "A label, not read yet.");
  sight.guidance = Guidance::ComeCloser;
  CHECK(view_camera(model).says == "A label: come closer.");
  sight.code = tub_number(1);
  sight.our_codes = 1;
  CHECK(view_camera(model).says == "It reads " + tub_number(1).grouped() + ".");
  sight.our_codes = 3;
  CHECK(view_camera(model).says.find("of 3") != std::string::npos);
  sight.trouble = "The camera does not answer.";
  CHECK(view_camera(model).says == "No picture just now.");
  CHECK(view_camera(model).trouble == sight.trouble);
  model.camera->sight.reset();
  CHECK(view_camera(model).says == "Waiting for the first picture.");
  model.settings.camera.clear();
  CHECK(view_camera(model).says.starts_with("No camera"));
}

TEST_CASE("none, the test pattern and every camera can be chosen, the one that is away too") {
  Model model = looking();
  CHECK(words_of(view_camera(model).sources) ==
        std::vector<std::string>{"none", "test", "Shelf Eye 720p"});
  model.camera->plugged_in = {shelf_eye, "/dev/v4l/by-id/usb-Other-video-index0"};
  const auto sources = view_camera(model).sources;
  CHECK(words_of(sources) == std::vector<std::string>{"none", "test", "Shelf Eye 720p", "Other"});
  CHECK(sources[2].chosen);
  CHECK(std::get<SetUp>(sources[0].intent).settings.camera.empty());
  CHECK(std::get<SetUp>(sources[3].intent).settings.camera ==
        "/dev/v4l/by-id/usb-Other-video-index0");
}

TEST_CASE("each tap moves or sizes the box that is seen") {
  Model model = looking();
  model.settings.aim = {0.5, 0.5, 0.5};
  CHECK(after(model, "left").x < 0.5);
  CHECK(after(model, "right").x > 0.5);
  CHECK(after(model, "up").y < 0.5);
  CHECK(after(model, "down").y > 0.5);
  CHECK(after(model, "smaller").side < 0.5);
  CHECK(after(model, "larger").side > 0.5);
  CHECK(after(model, "whole") == Aim{});
  model.settings.aim = {0.3, 0.6, 0.5};
  CHECK(after(model, "middle") == Aim{0.5, 0.5, 0.5});
}

TEST_CASE("no tap goes to waste: from the edge one tap back moves the box again") {
  Model model = looking();
  model.settings.aim = {0.5, 0.5, 0.5};
  const Aim edge = after(model, "right", 30);
  model.settings.aim = edge;
  const AimBox there = aim_box(edge, 1280, 720);
  CHECK(there.left + there.width == 1280);
  CHECK(aim_box(after(model, "left"), 1280, 720).left < there.left);
}

TEST_CASE("the box never leaves the picture and never becomes too small to hold a label") {
  rc::prop("whatever is tapped", [] {
    Model model = looking();
    for (int i = 0; i < 40; ++i) {
      const auto keys = view_camera(model).aim_keys;
      const auto& key = keys[*rc::gen::inRange<std::size_t>(0, keys.size())];
      if (const auto* set = std::get_if<SetUp>(&key.intent)) model.settings = set->settings;
    }
    const AimBox box = aim_box(model.settings.aim, 1280, 720);
    RC_ASSERT(box.left >= 0);
    RC_ASSERT(box.left + box.width <= 1280);
    RC_ASSERT(box.top >= 0);
    RC_ASSERT(box.top + box.height <= 720);
    RC_ASSERT(box.width >= 140);
  });
}

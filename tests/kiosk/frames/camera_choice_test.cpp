#include "kiosk/frames/camera_choice.hpp"

#include "kiosk/frames/chosen_source.hpp"
#include "tests/frame.hpp"

using namespace rackside;

TEST_CASE("a camera is offered by what it calls itself, out of its stable path") {
  CHECK(camera_label("/dev/v4l/by-id/usb-Shelf_Eye_720p-video-index0") == "Shelf Eye 720p");
  CHECK(camera_label("/dev/video2") == "video2");
  CHECK(camera_label("").empty());
}

TEST_CASE("every path that setup can keep leads to a source, and no path to none") {
  CHECK(source_at("") == nullptr);
  const auto pattern = source_at(std::string(test_pattern_path));
  REQUIRE(pattern);
  CHECK(pattern->name() == "test pattern");
  const auto camera = source_at("/dev/v4l/by-id/usb-Nobody-video-index0");
  REQUIRE(camera);
  CHECK(camera->next(std::chrono::milliseconds{0}).error().kind == ErrorKind::Broken);
}

#include "kiosk/frames/camera_source.hpp"

#include <linux/videodev2.h>

#include <cerrno>

#include "tests/fakes/fake_camera.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using rackside::tests::FakeCamera;
using std::chrono::milliseconds;

namespace {

constexpr milliseconds soon{20};

struct Setup {
  FakeCamera camera;
  CameraSource source;

  explicit Setup(std::vector<std::uint32_t> formats = {V4L2_PIX_FMT_YUYV}, int width = 4,
                 int height = 2)
      : camera(std::move(formats), width, height),
        source({"/dev/v4l/by-id/usb-Shelf_Eye-video-index0"}, camera.calls()) {}

  // The grey of the next frame's pixels, all alike; -1 for no frame.
  int next_grey() {
    const auto frame = source.next(soon);
    REQUIRE(frame);
    if (!*frame) return -1;
    for (const auto pixel : (*frame)->pixels) REQUIRE(pixel == (*frame)->pixels.front());
    return (*frame)->pixels.front();
  }
};

}  // namespace

TEST_CASE("luma is taken from every format that a camera may agree to") {
  for (const std::uint32_t format : {V4L2_PIX_FMT_GREY, V4L2_PIX_FMT_YUYV, V4L2_PIX_FMT_YUV420,
                                     V4L2_PIX_FMT_YVU420, V4L2_PIX_FMT_NV12, V4L2_PIX_FMT_NV21,
                                     V4L2_PIX_FMT_YVYU, V4L2_PIX_FMT_UYVY, V4L2_PIX_FMT_VYUY}) {
    Setup setup({format});
    CHECK(setup.next_grey() == -1);
    setup.camera.show_grey(90);
    CHECK(setup.next_grey() == 90);
  }
}

TEST_CASE("a camera without a usable format says so") {
  Setup setup({V4L2_PIX_FMT_MJPEG});
  const auto frame = setup.source.next(soon);
  REQUIRE_FALSE(frame);
  CHECK(frame.error().kind == ErrorKind::Broken);
}

TEST_CASE("luma stands where the packing says, whatever the colours beside it") {
  const auto two_by_one = [](std::uint32_t format, std::vector<std::uint8_t> bytes) {
    const auto image = luma_of({format, 2, 1, static_cast<int>(bytes.size())}, bytes);
    REQUIRE(image);
    return image->pixels;
  };
  // Kernel documentation, "Packed YUV formats" and "Semi-planar YUV formats": the order of bytes.
  const std::vector<std::uint8_t> luma{10, 20};
  CHECK(two_by_one(V4L2_PIX_FMT_YUYV, {10, 1, 20, 2}) == luma);
  CHECK(two_by_one(V4L2_PIX_FMT_YVYU, {10, 2, 20, 1}) == luma);
  CHECK(two_by_one(V4L2_PIX_FMT_UYVY, {1, 10, 2, 20}) == luma);
  CHECK(two_by_one(V4L2_PIX_FMT_VYUY, {2, 10, 1, 20}) == luma);
  CHECK(two_by_one(V4L2_PIX_FMT_GREY, {10, 20}) == luma);
  CHECK_FALSE(has_luma(V4L2_PIX_FMT_RGB24));
}

TEST_CASE("of two formats that a camera offers the one with its luma in the open is taken") {
  Setup setup({V4L2_PIX_FMT_MJPEG, V4L2_PIX_FMT_YUYV});
  CHECK(setup.next_grey() == -1);
  setup.camera.show_grey(90);
  CHECK(setup.next_grey() == 90);
}

TEST_CASE("of frames that wait only the latest is given") {
  Setup setup;
  CHECK(setup.next_grey() == -1);
  setup.camera.show_grey(10);
  setup.camera.show_grey(20);
  setup.camera.show_grey(30);
  CHECK(setup.next_grey() == 30);
  CHECK(setup.next_grey() == -1);
}

TEST_CASE("a torn frame is passed over, whether it is short or marked by the driver") {
  Setup setup;
  CHECK(setup.next_grey() == -1);
  setup.camera.show({.bytes = {1, 2, 3}});
  CHECK(setup.next_grey() == -1);
  setup.camera.show({.bytes = std::vector<std::uint8_t>(16, 5), .error_flag = true});
  CHECK(setup.next_grey() == -1);
  setup.camera.show_grey(60);
  CHECK(setup.next_grey() == 60);
  CHECK(setup.camera.opened == 1);
}

TEST_CASE("a wake-up without a frame, a signal and a frame lost on the bus do no harm") {
  Setup setup;
  CHECK(setup.next_grey() == -1);
  for (const int error : {EAGAIN, EINTR, EIO}) {
    setup.camera.fail_once(error);
    setup.camera.show_grey(70);
    const int first = setup.next_grey();
    CHECK((first == 70 || (error == EAGAIN && setup.next_grey() == 70)));
  }
}

TEST_CASE("an unplugged camera is missed, and used again as soon as it is back") {
  Setup setup;
  CHECK(setup.next_grey() == -1);
  setup.camera.unplug();
  const auto away = setup.source.next(soon);
  REQUIRE_FALSE(away);
  CHECK(away.error().kind == ErrorKind::Broken);
  CHECK_FALSE(setup.source.next(soon));
  CHECK(setup.camera.mapped == setup.camera.unmapped);
  setup.camera.plug_in();
  CHECK(setup.next_grey() == -1);
  setup.camera.show_grey(80);
  CHECK(setup.next_grey() == 80);
}

TEST_CASE("a camera unplugged and plugged in again and again is used each time") {
  Setup setup;
  for (int round = 1; round <= 5; ++round) {
    CHECK(setup.next_grey() == -1);
    const auto grey = static_cast<std::uint8_t>(10 * round);
    setup.camera.show_grey(grey);
    CHECK(setup.next_grey() == grey);
    setup.camera.unplug();
    CHECK_FALSE(setup.source.next(soon));
    setup.camera.plug_in();
    CHECK(setup.camera.mapped == setup.camera.unmapped);
  }
  CHECK(setup.camera.opened == 5);
}

TEST_CASE("another camera behind the same path, with another size, is used as well") {
  Setup setup({V4L2_PIX_FMT_YUYV}, 8, 4);
  CHECK(setup.next_grey() == -1);
  setup.camera.show_grey(30);
  CHECK(setup.next_grey() == 30);
  setup.camera.unplug();
  CHECK_FALSE(setup.source.next(soon));
  setup.camera.change_size(16, 8);
  setup.camera.plug_in();
  CHECK(setup.next_grey() == -1);
  setup.camera.show_grey(40);
  const auto frame = setup.source.next(soon);
  REQUIRE(frame);
  REQUIRE(*frame);
  CHECK((*frame)->width == 16);
  CHECK((*frame)->height == 8);
}

TEST_CASE("a camera that is pulled out between two frames is missed at the next one") {
  Setup setup;
  CHECK(setup.next_grey() == -1);
  setup.camera.show_grey(20);
  setup.camera.fail_once(ENODEV);
  CHECK_FALSE(setup.source.next(soon));
  CHECK(setup.camera.mapped == setup.camera.unmapped);
  setup.camera.show_grey(25);
  CHECK(setup.next_grey() == 25);
}

TEST_CASE("a frame size that changes under way is taken up, be it smaller or larger") {
  for (const auto& [width, height] : {std::pair{4, 2}, {16, 8}}) {
    Setup setup({V4L2_PIX_FMT_YUYV}, 8, 4);
    CHECK(setup.next_grey() == -1);
    setup.camera.show_grey(30);
    CHECK(setup.next_grey() == 30);
    setup.camera.change_size(width, height);
    setup.camera.show_grey(40);
    CHECK(setup.next_grey() == -1);
    CHECK(setup.next_grey() == -1);
    setup.camera.show_grey(50);
    const auto frame = setup.source.next(soon);
    REQUIRE(frame);
    REQUIRE(*frame);
    CHECK((*frame)->width == width);
    CHECK((*frame)->height == height);
  }
}

TEST_CASE("a camera that loses every frame is started anew") {
  Setup setup;
  CHECK(setup.next_grey() == -1);
  for (int i = 0; i < 30; ++i) setup.camera.fail_once(EIO);
  setup.camera.show_grey(1);
  CHECK_FALSE(setup.source.next(soon));
  CHECK(setup.next_grey() == 1);
  CHECK(setup.camera.opened == 2);
}

TEST_CASE("lines that are longer than the picture are cut to it") {
  const FrameFormat format{V4L2_PIX_FMT_GREY, 2, 2, 3};
  const std::vector<std::uint8_t> bytes{1, 2, 99, 3, 4, 99};
  const auto image = luma_of(format, bytes);
  REQUIRE(image);
  CHECK(image->pixels == std::vector<std::uint8_t>{1, 2, 3, 4});
}

TEST_CASE("a camera is called by the name it gives itself") {
  Setup setup;
  CHECK(setup.next_grey() == -1);
  CHECK(setup.source.name() == "camera Shelf Eye");
}

TEST_CASE("a path without a camera is Broken, not the end") {
  CameraSource source({"/nowhere/video0"});
  CHECK(source.next(soon).error().kind == ErrorKind::Broken);
}

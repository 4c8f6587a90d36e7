#include "kiosk/camera/frame_change.hpp"

#include "tests/frame.hpp"
#include "tests/generators/frames.hpp"

using namespace rackside;

namespace {

// The same still scene, each time with a sensor's noise of its own.
GreyImage still(double noise, std::uint64_t shot) {
  GreyImage image{320, 240, std::vector<std::uint8_t>(320 * 240)};
  std::mt19937_64 random(shot);
  std::normal_distribution<double> normal(0, noise);
  for (std::size_t i = 0; i < image.pixels.size(); ++i)
    image.pixels[i] = static_cast<std::uint8_t>(
        std::clamp(100 + 50 * static_cast<double>(i % 7 < 3) + normal(random), 0.0, 255.0));
  return image;
}

}  // namespace

TEST_CASE("the first frame is always news") {
  FrameChange change;
  CHECK(change.differs(still(0, 1)));
}

TEST_CASE("noise alone is no news") {
  FrameChange change;
  CHECK(change.differs(still(10, 1)));
  for (std::uint64_t shot = 2; shot < 12; ++shot) CHECK_FALSE(change.differs(still(10, shot)));
}

TEST_CASE("a label that comes into view is news, and so is one that moves by some pixels") {
  tests::Random random(4);
  const auto film = tests::film(tests::symbol_of("T000000", 1), {.clutter = 0}, 3, random);
  GreyImage empty = film[0].image;
  std::ranges::fill(empty.pixels, std::uint8_t{208});
  FrameChange change;
  CHECK(change.differs(empty));
  CHECK(change.differs(film[0].image));
  CHECK(change.differs(film[1].image));
}

TEST_CASE("a slow change of light adds up until it is news") {
  FrameChange change;
  GreyImage image{64, 64, std::vector<std::uint8_t>(64 * 64, 100)};
  CHECK(change.differs(image));
  int news = 0;
  for (int level = 101; level <= 110; ++level) {
    std::ranges::fill(image.pixels, static_cast<std::uint8_t>(level));
    news += change.differs(image);
  }
  CHECK(news == 2);
}

TEST_CASE("another frame size is news") {
  FrameChange change;
  CHECK(change.differs({64, 64, std::vector<std::uint8_t>(64 * 64, 100)}));
  CHECK(change.differs({128, 32, std::vector<std::uint8_t>(64 * 64, 100)}));
}

#include "labels/reader/plane.hpp"

#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

// Rows of 5 pixels: 0, 10, 20, ...
GreyImage ramp(int rows) {
  GreyImage image{5, rows, {}};
  for (int i = 0; i < 5 * rows; ++i) image.pixels.push_back(static_cast<std::uint8_t>(10 * i));
  return image;
}

}  // namespace

TEST_CASE("a picture shrinks to means, and what does not fill a pixel is left out") {
  const GreyImage half = shrunk(ramp(3), 2);
  CHECK(half.width == 2);
  CHECK(half.height == 1);
  CHECK(half.pixels == std::vector<std::uint8_t>{30, 50});
  CHECK(shrunk(ramp(3), 2, 1, 1).pixels == std::vector<std::uint8_t>{90, 110});
  CHECK(shrunk(ramp(1), 2).empty());
  CHECK(halved(as_plane(ramp(3))).value == std::vector<float>{30, 50});
}

#include "labels/reader/arrangement.hpp"

#include "labels/symbol/symbol.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

constexpr int module = 5, margin = 40;

// A symbol straight before the camera, its corner at `margin`.
GreyImage straight_on(const Symbol& symbol) {
  const int size = symbol.side * module + 2 * margin;
  GreyImage image{size, size,
                  std::vector<std::uint8_t>(static_cast<std::size_t>(size * size), 255)};
  for (int y = 0; y < symbol.side * module; ++y)
    for (int x = 0; x < symbol.side * module; ++x)
      if (symbol.is_dark(x / module, y / module))
        image.pixels[static_cast<std::size_t>((y + margin) * size + x + margin)] = 0;
  return image;
}

}  // namespace

TEST_CASE("a hundredth of a pixel in a finder pattern's place tilts no symbol") {
  const Symbol symbol =
      make_symbol(make_code(CodeKind::Enclosure, "6MF030").value(), SymbolVersion::V2);
  const GreyImage image = straight_on(symbol);
  const double near = margin + 3.5 * module, far = margin + (symbol.side - 3.5) * module;
  const double size = 7 * module;
  for (const double off : {-0.05, -0.01, 0.01, 0.05}) {
    const std::vector<FinderMark> marks{{{near + off, near}, size, size, 15},
                                        {{far, near - off}, size, size, 15},
                                        {{near, far + off}, size, size, 15}};
    const auto list =
        arrangements_of_three(as_plane(image), marks, 0.87 * image.width, [] { return true; });
    REQUIRE_FALSE(list.empty());
    const Point fourth = list.front().shape.corners[2];
    const double end = margin + symbol.side * module;
    CHECK(distance_squared(fourth, {end, end}) < 1);
  }
}

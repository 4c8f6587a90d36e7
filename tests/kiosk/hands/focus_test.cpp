#include "kiosk/hands/focus.hpp"

#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::kiosk;

namespace {

// Three by three, 100 pixels apart.
Scene grid() {
  Scene scene;
  for (int row = 0; row < 3; ++row)
    for (int column = 0; column < 3; ++column)
      scene.targets.push_back({{column * 100.0, row * 100.0, 80, 80}, "", Tick{}});
  return scene;
}

}  // namespace

TEST_CASE("arrow keys go to the neighbour in their direction") {
  const Scene scene = grid();
  CHECK(next_focus(scene, std::nullopt, Direction::Down) == 0);
  CHECK(next_focus(scene, 4, Direction::Left) == 3);
  CHECK(next_focus(scene, 4, Direction::Right) == 5);
  CHECK(next_focus(scene, 4, Direction::Up) == 1);
  CHECK(next_focus(scene, 4, Direction::Down) == 7);
}

TEST_CASE("where nothing lies that way, the keys go on in order, round the end") {
  const Scene scene = grid();
  CHECK(next_focus(scene, 2, Direction::Right) == 3);
  CHECK(next_focus(scene, 8, Direction::Down) == 0);
  CHECK(next_focus(scene, 0, Direction::Left) == 8);
  CHECK_FALSE(next_focus(Scene{}, std::nullopt, Direction::Down));
}

#include "kiosk/hands/pointer.hpp"

#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::kiosk;

namespace {

Scene two_tiles() {
  Scene scene;
  scene.targets = {{{0, 0, 100, 100}, "took", Record{Action::Took}},
                   {{110, 0, 100, 100}, "refused", Record{Action::Refused}}};
  return scene;
}

}  // namespace

TEST_CASE("a tap acts on release inside the place where it began") {
  Pointer pointer;
  const Scene scene = two_tiles();
  pointer.press({50, 50}, scene);
  CHECK(pointer.pressed(scene) == 0);
  CHECK(pointer.release({60, 40}, scene) == Intent{Record{Action::Took}});
  CHECK_FALSE(pointer.pressed(scene));
}

TEST_CASE("sliding off calls a tap off, also when it ends on another tile") {
  Pointer pointer;
  const Scene scene = two_tiles();
  pointer.press({50, 50}, scene);
  pointer.move({105, 50});
  CHECK_FALSE(pointer.pressed(scene));
  CHECK_FALSE(pointer.release({150, 50}, scene));
}

TEST_CASE("sliding back onto the tile lets the tap stand") {
  Pointer pointer;
  const Scene scene = two_tiles();
  pointer.press({50, 50}, scene);
  pointer.move({105, 50});
  pointer.move({90, 50});
  CHECK(pointer.release({90, 50}, scene) == Intent{Record{Action::Took}});
}

TEST_CASE("a tap whose tile changed its meaning under the finger does nothing") {
  Pointer pointer;
  Scene scene = two_tiles();
  pointer.press({50, 50}, scene);
  scene.targets[0].intent = Record{Action::Died};
  CHECK_FALSE(pointer.release({50, 50}, scene));
}

TEST_CASE("of places that lie on each other the upper one is touched") {
  Scene scene = two_tiles();
  scene.targets.push_back({{20, 20, 20, 20}, "undo", Record{Action::Undo}});
  CHECK(target_at({30, 30}, scene) == 2);
  CHECK_FALSE(target_at({500, 500}, scene));
}

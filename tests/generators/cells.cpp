#include "tests/generators/cells.hpp"

namespace rackside::tests {
namespace {

template <class Set>
void sweep(std::vector<Cell>& cells, const std::string& name, const std::vector<double>& values,
           Set set, Scene scene = {}) {
  for (const double value : values) {
    set(scene, value);
    std::string number = std::to_string(value);
    number.erase(number.find_last_not_of('0') + 1);
    if (number.back() == '.') number.pop_back();
    cells.push_back({name + " " + number, scene});
  }
}

}  // namespace

Scene tub_in_hand(double module_px, int version) {
  return {.version = version,
          .module_px = module_px,
          .tilt = 25,
          .radius_mm = 45,
          .blur = 1,
          .motion = 2,
          .noise = 6,
          .shading = 0.3};
}

std::vector<Cell> all_cells() {
  std::vector<Cell> cells;
  const auto px = [](Scene& scene, double value) { scene.module_px = value; };
  sweep(cells, "px a module", {1.5, 2, 2.5, 3, 4}, px);
  sweep(cells, "blur", {1.5, 2}, [](Scene& scene, double value) { scene.blur = value; });
  sweep(cells, "motion", {6, 9}, [](Scene& scene, double value) { scene.motion = value; });
  sweep(cells, "noise", {20, 30}, [](Scene& scene, double value) { scene.noise = value; });
  sweep(cells, "tilt", {40, 55, 60}, [](Scene& scene, double value) { scene.tilt = value; },
        {.module_px = 5});
  sweep(cells, "cylinder mm", {10, 8}, [](Scene& scene, double value) { scene.radius_mm = value; },
        {.module_px = 5});
  sweep(cells, "glare", {0.2, 0.3, 0.4}, [](Scene& scene, double value) { scene.glare = value; });
  sweep(cells, "contrast", {50, 40, 30},
        [](Scene& scene, double value) { scene.contrast = value; });
  sweep(cells, "print gain", {0.25, 0.3}, [](Scene& scene, double value) { scene.gain = value; });
  sweep(cells, "clutter", {0}, [](Scene& scene, double value) { scene.clutter = value; });
  sweep(cells, "in hand V1, px", {2, 2.5, 3, 4, 5}, px, tub_in_hand(3, 1));
  sweep(cells, "in hand V2, px", {2, 2.5, 3, 4, 5}, px, tub_in_hand(3, 2));
  return cells;
}

}  // namespace rackside::tests

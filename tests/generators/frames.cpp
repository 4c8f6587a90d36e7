#include "tests/generators/frames.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include "tests/generators/clutter.hpp"
#include "tests/generators/optics.hpp"
#include "tests/generators/pose.hpp"

namespace rackside::tests {
namespace {

constexpr int rays = 3;  // a pixel, each way
constexpr double quiet_zone = 4;

double uniform(Random& random, double low, double high) {
  return std::uniform_real_distribution(low, high)(random);
}

struct Glare {
  double x = 0, y = 0, diameter = 0;  // modules
};

// Where and how bright the label's ink and paper are; positions in modules from the symbol's
// corner.
struct Print {
  const Modules& modules;
  const Scene& scene;
  Glare glare;
  Point shade;  // the way in which light is lost, of length 1

  [[nodiscard]] bool ink(double x, double y) const {
    const auto dark = [&](double px, double py) {
      return modules.at(static_cast<int>(std::floor(px)), static_cast<int>(std::floor(py)));
    };
    const double g = scene.gain;
    if (g <= 0) return dark(x, y);
    return dark(x - g, y - g) || dark(x + g, y - g) || dark(x - g, y + g) || dark(x + g, y + g);
  }

  [[nodiscard]] double level(double x, double y) const {
    const double middle = 128, half = scene.contrast / 2, side = modules.side;
    double value = ink(x, y) ? middle - half : middle + half;
    const double across = (x / side - 0.5) * shade.x + (y / side - 0.5) * shade.y;
    value *= 1 - scene.shading * std::clamp(across + 0.5, 0.0, 1.0);
    if (glare.diameter <= 0) return value;
    const double distance = std::hypot(x - glare.x, y - glare.y) - glare.diameter / 2;
    return value + (255 - value) * std::clamp(0.5 - distance, 0.0, 1.0);
  }

  [[nodiscard]] bool on_label(double x, double y) const {
    return x > -quiet_zone && y > -quiet_zone && x < modules.side + quiet_zone &&
           y < modules.side + quiet_zone;
  }
};

void draw(Light& light, const Print& print, const Pose& pose) {
  const float paper = static_cast<float>(print.scene.contrast / 2 + 128);
  for (int y = 0; y < light.height; ++y)
    for (int x = 0; x < light.width; ++x) {
      if (!pose.near_label(x, y)) continue;
      double sum = 0;
      for (int ray = 0; ray < rays * rays; ++ray) {
        const auto hit =
            pose.label_point({x + (ray % rays + 0.5) / rays, y + (ray / rays + 0.5) / rays});
        const bool label = hit && (print.scene.clutter <= 0 || print.on_label(hit->x, hit->y));
        sum += label ? print.level(hit->x, hit->y) : std::min(light.at(x, y), paper);
      }
      light.at(x, y) = static_cast<float>(sum / (rays * rays));
    }
}

Picture take(const Print& print, const Pose& pose, double smear_angle, const Light& surroundings,
             Random& random) {
  Light light = surroundings;
  draw(light, print, pose);
  blur(light, print.scene.blur);
  smear(light, print.scene.motion, smear_angle);
  Picture picture{expose(light, print.scene.noise, random), {}};
  const double side = print.modules.side;
  const Point at[] = {{0, 0}, {side, 0}, {side, side}, {0, side}};
  for (std::size_t i = 0; i < 4; ++i) picture.corners[i] = pose.picture_point(at[i]);
  return picture;
}

}  // namespace

std::vector<Picture> film(const Modules& modules, const Scene& scene, int count, Random& random) {
  const double turn = 2 * std::numbers::pi, side = modules.side;
  const Glare glare{uniform(random, 0, side), uniform(random, 0, side), scene.glare * side};
  const double shade_angle = uniform(random, 0, turn);
  const Print print{modules, scene, glare, {std::cos(shade_angle), std::sin(shade_angle)}};
  Hand hand{uniform(random, 0, turn), uniform(random, 0, turn), uniform(random, 0, turn),
            uniform(random, -scene.off_middle, scene.off_middle),
            uniform(random, -scene.off_middle, scene.off_middle)};
  Light surroundings(scene.width, scene.height, static_cast<float>(128 + scene.contrast / 2));
  if (scene.clutter > 0) scatter(surroundings, scene.clutter, random);
  std::vector<Picture> pictures;
  for (int i = 0; i < count; ++i) {
    pictures.push_back(
        take(print, Pose(scene, side, hand), uniform(random, 0, turn), surroundings, random));
    hand.turn += uniform(random, -0.05, 0.05);
    hand.tilt_axis += uniform(random, -0.05, 0.05);
    hand.x += uniform(random, -3, 3);
    hand.y += uniform(random, -3, 3);
  }
  return pictures;
}

Picture photograph(const Modules& modules, const Scene& scene, Random& random) {
  return film(modules, scene, 1, random).front();
}

}  // namespace rackside::tests

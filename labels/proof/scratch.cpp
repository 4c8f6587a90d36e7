#include "labels/proof/scratch.hpp"

#include <cmath>
#include <functional>
#include <numbers>
#include <random>
#include <utility>

namespace rackside {
namespace {

// Whether a line at `angle` that passes the symbol's middle at `beside` modules meets one of the
// finder patterns, with a module to spare.
bool meets_a_finder(double angle, double beside, int side) {
  constexpr double reach = 4.5;  // half a finder pattern and a module
  const double far = side / 2.0 - 3.5;
  for (const auto& [x, y] : {std::pair{-far, -far}, std::pair{far, -far}, std::pair{-far, far}}) {
    const double distance = std::abs(-std::sin(angle) * x + std::cos(angle) * y - beside);
    if (distance < reach * (std::abs(std::sin(angle)) + std::abs(std::cos(angle)))) return true;
  }
  return false;
}

}  // namespace

ScratchLine scratch_of(const Code& code, int side) {
  std::mt19937_64 random(std::hash<std::string_view>{}(code.text()));
  for (;;) {
    const double angle = static_cast<double>(random() % 180) * std::numbers::pi / 180;
    const double beside = (static_cast<double>(random() % 1000) / 1000 - 0.5) * side * 0.8;
    if (!meets_a_finder(angle, beside, side)) return {angle, beside};
  }
}

}  // namespace rackside

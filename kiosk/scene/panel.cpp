#include "kiosk/scene/panel.hpp"

#include <algorithm>
#include <cmath>

namespace rackside::kiosk {
namespace {

constexpr double mm_per_inch = 25.4;

double capital_mm(Step step) {
  switch (step) {
    case Step::State: return 7.3;
    case Step::Species: return 4.6;
    case Step::Instruction: return 3.8;
    case Step::Record: return 2.8;
    case Step::Caption: return 2.8;
  }
  return 2.8;
}

}  // namespace

Panel panel_of(int width, int height) {
  const int longer = std::max(width, height);
  const double inches = longer <= 1024 ? 7.0 : 10.1;
  const double diagonal = std::hypot(width, height);
  return {width, height, diagonal / (inches * mm_per_inch)};
}

Style style_of(Step step, Face face, const Panel& panel, const TextMetrics& metrics) {
  return style_with_capital(capital_mm(step), face, panel, metrics);
}

Style style_with_capital(double capital, Face face, const Panel& panel,
                         const TextMetrics& metrics) {
  const double pixels = panel.mm(capital) / metrics.capital_height(face);
  return {face, std::max(8, static_cast<int>(std::ceil(pixels)))};
}

}  // namespace rackside::kiosk

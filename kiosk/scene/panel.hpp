#pragma once
// The panel the kiosk is shown on, and the one type scale, in real millimetres.

#include "kiosk/scene/text_metrics.hpp"

namespace rackside::kiosk {

struct Panel {
  int width = 1280;
  int height = 800;
  double pixels_per_mm = 5.9;

  [[nodiscard]] double mm(double millimetres) const { return millimetres * pixels_per_mm; }
  [[nodiscard]] bool portrait() const { return height > width; }
  bool operator==(const Panel&) const = default;
};

/// A guess at the density where the display does not tell: touch panels for small computers are
/// 7 inches across at 800 or 1024 pixels and 10.1 at 1280 (common sizes, from memory).
[[nodiscard]] Panel panel_of(int width, int height);

/// Hands (Colle & Hiszem 2004): 20 mm keys, 3 mm apart, suffice for someone standing; never under
/// 15 mm for an action.
inline constexpr double usual_target_mm = 20;
inline constexpr double least_target_mm = 15;
inline constexpr double gap_mm = 2;

/// The five steps, as heights of a capital. At 600 mm, 0.7 degrees of arc are 7.3 mm (EN 301 549,
/// 5.1.4) and 16 to 22 minutes 2.8 to 3.8 mm (ISO 9241-3).
enum class Step { State, Species, Instruction, Record, Caption };

/// The style of a step in a face on this panel.
[[nodiscard]] Style style_of(Step step, Face face, const Panel& panel, const TextMetrics& metrics);
/// The style whose capitals have this height.
[[nodiscard]] Style style_with_capital(double capital_mm, Face face, const Panel& panel,
                                       const TextMetrics& metrics);

}  // namespace rackside::kiosk

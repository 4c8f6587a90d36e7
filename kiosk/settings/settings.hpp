#pragma once
// How this one kiosk is set up. It belongs to the machine, not to the collection: another kiosk
// that shares the log has another panel and another camera, so it is kept beside the log, not in
// it.

#include <chrono>
#include <optional>
#include <string>

#include "core/words/wording.hpp"
#include "labels/reader/aim.hpp"

namespace rackside::kiosk {

enum class PaletteName { Day, Dusk, Night };
enum class Motion { Shown, Off };

/// Pixels to a millimetre that a panel can have: from a 24-inch display at 1024 pixels to finer
/// than any eye needs.
inline constexpr double least_density = 2;
inline constexpr double most_density = 40;

struct Settings {
  PaletteName palette = PaletteName::Day;
  Wording wording;
  std::optional<double> pixels_per_mm;   // none: as the display says, or a guess
  std::chrono::minutes blank_after{10};  // 0: never
  Motion motion = Motion::Shown;
  std::string camera;   // stable path of the device; empty: none
  Aim aim;              // where in its picture a label is looked for
  std::string printer;  // queue; empty: labels go into files
  int printer_dpi = 300;
  std::string label_sheet = "a4-5x13";

  bool operator==(const Settings&) const = default;
};

}  // namespace rackside::kiosk

#pragma once
// The density of the display that the kiosk fills, as the display itself tells it.

#include <SDL.h>

#include <filesystem>
#include <optional>

#include "kiosk/console/edid.hpp"

namespace rackside::kiosk {

/// The size of the one display that is plugged in. None when there are several or none, or it
/// does not tell.
[[nodiscard]] std::optional<DisplaySize> connected_display(
    const std::filesystem::path& outputs = "/sys/class/drm");

/// Pixels to a millimetre of the display on which `window` stands, for a window that fills it. Asks
/// the display, then SDL; None when neither gives a plausible answer.
[[nodiscard]] std::optional<double> display_density(SDL_Window* window);

}  // namespace rackside::kiosk

#include "kiosk/console/display_density.hpp"

#include <cmath>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

namespace rackside::kiosk {
namespace {

namespace fs = std::filesystem;

bool is_connected(const fs::path& output) {
  std::string status;
  std::ifstream(output / "status") >> status;
  return status == "connected";
}

std::vector<std::uint8_t> bytes_of(const fs::path& file) {
  std::ifstream stream(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(stream), {}};
}

// What X servers answer when they do not know (96 dots to an inch) is no answer.
bool made_up(float dots_per_inch) { return std::abs(dots_per_inch - 96) < 1; }

std::optional<DisplaySize> as_sdl_says(int display, int width, int height) {
  float across = 0;
  float down = 0;
  if (SDL_GetDisplayDPI(display, nullptr, &across, &down) != 0) return std::nullopt;
  if (across <= 0 || down <= 0 || (made_up(across) && made_up(down))) return std::nullopt;
  constexpr double mm_per_inch = 25.4;
  return DisplaySize{width * mm_per_inch / across, height * mm_per_inch / down};
}

}  // namespace

std::optional<DisplaySize> connected_display(const fs::path& outputs) {
  std::optional<fs::path> found;
  std::error_code none;
  for (const auto& output : fs::directory_iterator(outputs, none)) {
    if (!is_connected(output.path())) continue;
    if (found) return std::nullopt;
    found = output.path();
  }
  if (!found) return std::nullopt;
  return display_size(bytes_of(*found / "edid"));
}

std::optional<double> display_density(SDL_Window* window) {
  const int display = SDL_GetWindowDisplayIndex(window);
  SDL_DisplayMode mode{};
  if (display < 0 || SDL_GetCurrentDisplayMode(display, &mode) != 0) return std::nullopt;
  for (const auto& size : {connected_display(), as_sdl_says(display, mode.w, mode.h)})
    if (size)
      if (const auto density = plausible_density(mode.w, mode.h, *size)) return density;
  return std::nullopt;
}

}  // namespace rackside::kiosk

#include "kiosk/console/access.hpp"

#include <unistd.h>

#include <cstdlib>
#include <system_error>

namespace rackside::kiosk {
namespace {

namespace fs = std::filesystem;
using Devices = ConsoleAccess::Devices;

bool set(const char* variable) {
  const char* value = std::getenv(variable);
  return value != nullptr && *value != '\0';
}

// The best of the folder's devices whose names begin with `beginning`.
Devices best_of(const fs::path& folder, std::string_view beginning, int wanted) {
  Devices best = Devices::None;
  std::error_code none;
  for (const auto& entry : fs::directory_iterator(folder, none)) {
    if (!entry.path().filename().string().starts_with(beginning)) continue;
    if (access(entry.path().c_str(), wanted) == 0) return Devices::Open;
    best = Devices::Forbidden;
  }
  return best;
}

}  // namespace

std::string_view console_driver() {
  const bool chosen = set("SDL_VIDEODRIVER") || set("DISPLAY") || set("WAYLAND_DISPLAY");
  return chosen ? "" : "KMSDRM";
}

ConsoleAccess look_at_console(const fs::path& devices) {
  return {best_of(devices / "dri", "card", R_OK | W_OK), best_of(devices / "input", "event", R_OK)};
}

std::string screen_advice(const ConsoleAccess& access) {
  switch (access.screens) {
    case Devices::None:
      return "There is no screen to draw on: no desktop is running, and this machine has no "
             "/dev/dri/card0. Switch on its display driver (on a single-board computer: the KMS "
             "overlay), or start Rackside on a desktop. The log is untouched.";
    case Devices::Forbidden:
      return "There is a screen, but this user may not draw on it. Add the user to the groups: "
             "sudo usermod -aG video,render,input \"$USER\", log in again and start again. The log "
             "is untouched.";
    case Devices::Open:
      return "The screen could not be taken over. Another program may be holding it: end the "
             "desktop, or start Rackside on it, or on a free console. The log is untouched.";
  }
  return {};
}

std::string input_advice(const ConsoleAccess& access) {
  switch (access.inputs) {
    case Devices::None: return "No touch screen, keyboard or scanner is plugged in.";
    case Devices::Forbidden:
      return "Touch and scanner cannot be read by this user. Add the user to the group input and "
             "start again.";
    case Devices::Open: return {};
  }
  return {};
}

}  // namespace rackside::kiosk

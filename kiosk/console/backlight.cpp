#include "kiosk/console/backlight.hpp"

#include <unistd.h>

#include <fstream>
#include <system_error>

namespace rackside::kiosk {

Backlight::Backlight(const std::filesystem::path& lamps) {
  std::error_code none;
  for (const auto& lamp : std::filesystem::directory_iterator(lamps, none)) {
    const auto power = lamp.path() / "bl_power";
    if (access(power.c_str(), W_OK) == 0) switches_.push_back(power);
  }
}

// A lamp that cannot be switched just now is nothing a person at the kiosk could do about.
void Backlight::lit(bool on) const {
  for (const auto& power : switches_) std::ofstream(power) << (on ? "0\n" : "4\n");
}

}  // namespace rackside::kiosk

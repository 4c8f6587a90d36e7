#pragma once
// Starting without a desktop: which of SDL's drivers, and what is missing when it does not start.

#include <filesystem>
#include <string>
#include <string_view>

namespace rackside::kiosk {

/// SDL's driver for a bare console, "KMSDRM", when there is no desktop and nobody has chosen
/// one ($SDL_VIDEODRIVER); else empty, and SDL chooses. Reads the environment.
[[nodiscard]] std::string_view console_driver();

/// What there is on this machine, and what of it this user may open.
struct ConsoleAccess {
  enum class Devices { None, Forbidden, Open };
  Devices screens = Devices::None;  // /dev/dri/card*
  Devices inputs = Devices::None;   // /dev/input/event*
  bool operator==(const ConsoleAccess&) const = default;
};
[[nodiscard]] ConsoleAccess look_at_console(const std::filesystem::path& devices = "/dev");

/// Why there is no picture and what to do about it.
[[nodiscard]] std::string screen_advice(const ConsoleAccess& access);
/// Why nothing that is touched or scanned arrives, and what to do; empty when it can.
[[nodiscard]] std::string input_advice(const ConsoleAccess& access);

}  // namespace rackside::kiosk

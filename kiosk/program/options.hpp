#pragma once
// The words on the command line.

#include <optional>
#include <string>
#include <variant>

#include "core/values/result.hpp"
#include "kiosk/settings/settings.hpp"

namespace rackside::kiosk {

struct Options {
  std::string log;      // empty: the XDG data folder
  std::string frames;   // a folder or file of pictures in the place of a camera; empty: none
  std::string camera;   // a camera's path; empty: none
  std::string tell_to;  // a file or pipe that gets every sentence the kiosk tells; empty: none
  std::string by = "keeper";
  int width = 0;  // of the window; 0: the whole screen
  int height = 0;
  bool closable = false;  // also when it fills the screen
  // For this start, in the place of what the settings say.
  std::optional<double> pixels_per_mm;
  std::optional<PaletteName> palette;
};

/// Options, or the exit code of a program that has said its help or what was wrong.
[[nodiscard]] std::variant<Options, int> read_options(int count, char** words);

}  // namespace rackside::kiosk

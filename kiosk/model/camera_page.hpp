#pragma once
// What setup's camera page knows.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/code/code.hpp"
#include "labels/reader/geometry.hpp"
#include "labels/reader/guidance.hpp"

namespace rackside::kiosk {

/// What the camera sees just now, without its pixels: they would make the model a heavy value that
/// no test can write down. The picture goes by a number, under which the shell has it.
struct CameraSight {
  std::string camera;         // path of the camera this is from; it may have been changed since
  std::string source;         // what the source calls itself
  std::uint64_t picture = 0;  // its number; 0: none yet
  int width = 0;              // px
  int height = 0;
  std::vector<Quadrilateral> read;    // symbols that were read, px of the picture
  std::vector<Quadrilateral> unread;  // that are there but were not
  std::optional<Code> code;           // ours, the one nearest to the aim
  int our_codes = 0;
  std::optional<Guidance> guidance;
  std::string trouble;  // empty: none
  bool operator==(const CameraSight&) const = default;
};

/// While the page is open.
struct CameraPage {
  std::vector<std::string> plugged_in;  // paths of the cameras there are
  std::optional<CameraSight> sight;     // none until something is seen
  bool operator==(const CameraPage&) const = default;
};

}  // namespace rackside::kiosk

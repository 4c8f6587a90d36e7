#pragma once
// What the camera's worker tells: plain data, nothing to draw with.

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "labels/reader/frame_reader.hpp"

namespace rackside {

/// The newest frame and what was found in it: for the setup screen's live picture.
struct CameraView {
  std::string source;                        // FrameSource::name
  std::shared_ptr<const GreyImage> picture;  // none before the first frame
  AimBox box{};                              // px of the picture
  std::vector<Quadrilateral> read;           // symbols that were read, ours and others
  std::vector<Quadrilateral> unread;         // symbols that are there but were not
  std::optional<Guidance> guidance;
  std::optional<Code> code;      // ours, the one nearest to the aim
  int our_codes = 0;             // different ones in view
  std::optional<Error> trouble;  // while the source is away
};

/// A code of ours came into view; `our_codes` tells whether others were beside it.
struct CodeShown {
  Code code;
  int our_codes = 1;
  bool operator==(const CodeShown&) const = default;
};
/// A label that is not ours, or whose check character does not fit, came into view.
struct StrangerShown {
  Error why;
  bool operator==(const StrangerShown&) const = default;
};
/// The source went away; it is looked for until it is back.
struct SourceLost {
  Error why;
  bool operator==(const SourceLost&) const = default;
};
struct SourceBack {
  std::string source;
  bool operator==(const SourceBack&) const = default;
};
/// One picture of a folder could not be opened.
struct PictureRefused {
  Error why;
  bool operator==(const PictureRefused&) const = default;
};
/// What would help changed; none when nothing is wrong any more.
struct GuidanceChanged {
  std::optional<Guidance> guidance;
  bool operator==(const GuidanceChanged&) const = default;
};
using CameraNews =
    std::variant<CodeShown, StrangerShown, SourceLost, SourceBack, PictureRefused, GuidanceChanged>;

}  // namespace rackside

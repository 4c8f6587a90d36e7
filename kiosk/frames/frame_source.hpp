#pragma once
// The port behind which pictures come in: a camera, a folder, a file, a test pattern.

#include <chrono>
#include <optional>
#include <string>

#include "core/values/result.hpp"
#include "labels/reader/grey_image.hpp"

namespace rackside {

/// Used by one thread, but for `interrupt`.
class FrameSource {
 public:
  virtual ~FrameSource() = default;

  /// The next picture; none when `patience` ran out or `interrupt` was called. A source that falls
  /// behind gives the latest picture, never an old one, unless it is a list of files. Errors:
  /// Broken while the device is away (it is looked for again at the next call), BadInput for one
  /// file that is no picture (the next call goes on behind it).
  [[nodiscard]] virtual Result<std::optional<GreyImage>> next(
      std::chrono::milliseconds patience) = 0;

  /// Makes a waiting `next`, or else the coming one, return at once. From any thread.
  virtual void interrupt() = 0;

  /// "camera USB 2.0 Camera", "pictures in /tmp/frames": for setup and for sentences.
  [[nodiscard]] virtual std::string name() const = 0;
};

}  // namespace rackside

#pragma once
// A finger or a mouse becomes a tap. A tap acts on release inside the place where it began; sliding
// off calls it off. Nothing needs a double tap, a long press or a hover.

#include <optional>

#include "kiosk/scene/scene.hpp"

namespace rackside::kiosk {

class Pointer {
 public:
  void press(Spot spot, const Scene& scene);
  void move(Spot spot);
  /// The intent of the place that was tapped. The picture may have changed under the finger: the
  /// tap counts only where the same place with the same meaning is still there.
  [[nodiscard]] std::optional<Intent> release(Spot spot, const Scene& scene);
  void cancel() { held_.reset(); }

  /// Which of the scene's targets is held down just now.
  [[nodiscard]] std::optional<std::size_t> pressed(const Scene& scene) const;

 private:
  std::optional<Target> held_;
  bool inside_ = false;
};

/// The target under `spot`; of several the one listed last, which lies on top.
[[nodiscard]] std::optional<std::size_t> target_at(Spot spot, const Scene& scene);

}  // namespace rackside::kiosk

#include "kiosk/hands/pointer.hpp"

namespace rackside::kiosk {

std::optional<std::size_t> target_at(Spot spot, const Scene& scene) {
  for (std::size_t i = scene.targets.size(); i-- > 0;)
    if (scene.targets[i].box.holds(spot)) return i;
  return std::nullopt;
}

void Pointer::press(Spot spot, const Scene& scene) {
  held_.reset();
  if (const auto index = target_at(spot, scene)) held_ = scene.targets[*index];
  inside_ = held_.has_value();
}

void Pointer::move(Spot spot) { inside_ = held_ && held_->box.holds(spot); }

std::optional<Intent> Pointer::release(Spot spot, const Scene& scene) {
  move(spot);
  const bool tapped = inside_ && pressed(scene).has_value();
  const auto held = std::exchange(held_, std::nullopt);
  if (!tapped) return std::nullopt;
  return held->intent;
}

std::optional<std::size_t> Pointer::pressed(const Scene& scene) const {
  if (!held_ || !inside_) return std::nullopt;
  for (std::size_t i = 0; i < scene.targets.size(); ++i)
    if (scene.targets[i] == *held_) return i;
  return std::nullopt;
}

}  // namespace rackside::kiosk

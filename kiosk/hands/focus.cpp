#include "kiosk/hands/focus.hpp"

#include <cmath>
#include <limits>

namespace rackside::kiosk {
namespace {

bool forward(Direction direction) {
  return direction == Direction::Right || direction == Direction::Down;
}

// How far `to` lies from `from` in the direction; sideways distance counts double. None when it
// does not lie that way.
std::optional<double> distance(const Box& from, const Box& to, Direction direction) {
  const double dx = to.middle().x - from.middle().x;
  const double dy = to.middle().y - from.middle().y;
  const bool across = direction == Direction::Left || direction == Direction::Right;
  const double along = (across ? dx : dy) * (forward(direction) ? 1 : -1);
  if (along <= 1) return std::nullopt;
  return along + 2 * std::abs(across ? dy : dx);
}

}  // namespace

std::optional<std::size_t> next_focus(const Scene& scene, std::optional<std::size_t> from,
                                      Direction direction) {
  const auto& targets = scene.targets;
  if (targets.empty()) return std::nullopt;
  if (!from || *from >= targets.size()) return 0;
  std::optional<std::size_t> best;
  double nearest = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < targets.size(); ++i) {
    const auto far = distance(targets[*from].box, targets[i].box, direction);
    if (i == *from || !far || *far >= nearest) continue;
    nearest = *far;
    best = i;
  }
  if (best) return best;
  return (*from + (forward(direction) ? 1 : targets.size() - 1)) % targets.size();
}

}  // namespace rackside::kiosk

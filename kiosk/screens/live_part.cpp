#include "kiosk/screens/live_part.hpp"

#include <algorithm>
#include <cmath>

namespace rackside::kiosk {

Box picture_place(const Box& box, int width, int height) {
  const double scale = std::min(box.width / width, box.height / height);
  const double wide = std::floor(width * scale), high = std::floor(height * scale);
  return {box.x + std::floor((box.width - wide) / 2), box.y + std::floor((box.height - high) / 2),
          wide, high};
}

}  // namespace rackside::kiosk

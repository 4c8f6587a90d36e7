#include "tests/generators/clutter.hpp"

#include <algorithm>

namespace rackside::tests {
namespace {

int below(Random& random, int limit) {
  return static_cast<int>(random() % static_cast<std::uint64_t>(std::max(1, limit)));
}

void fill(Light& light, int left, int top, int width, int height, float level) {
  for (int y = std::max(0, top); y < std::min(light.height, top + height); ++y)
    for (int x = std::max(0, left); x < std::min(light.width, left + width); ++x)
      light.at(x, y) = level;
}

void board(Light& light, Random& random) {
  fill(light, below(random, light.width), below(random, light.height), 20 + below(random, 200),
       20 + below(random, 200), static_cast<float>(20 + below(random, 220)));
}

// Short strokes of uneven length on a line, as print is at a distance.
void print_line(Light& light, Random& random) {
  const int top = below(random, light.height), height = 4 + below(random, 14);
  int x = below(random, light.width);
  const int end = x + 40 + below(random, 200);
  while (x < end) {
    const int width = 1 + below(random, height / 2);
    fill(light, x, top + below(random, height / 2), width, height / 2 + below(random, height / 2),
         30);
    x += width + 1 + below(random, height / 2);
  }
}

void mesh(Light& light, Random& random) {
  const int left = below(random, light.width), top = below(random, light.height);
  const int pitch = 4 + below(random, 16), wire = 1 + pitch / 4, size = 40 + below(random, 120);
  for (int offset = 0; offset < size; offset += pitch) {
    fill(light, left + offset, top, wire, size, 60);
    fill(light, left, top + offset, size, wire, 60);
  }
}

}  // namespace

void scatter(Light& light, double amount, Random& random) {
  const int count = static_cast<int>(amount * 40);
  for (int i = 0; i < count; ++i) board(light, random);
  for (int i = 0; i < 2 * count; ++i) print_line(light, random);
  for (int i = 0; i < count / 8; ++i) mesh(light, random);
}

}  // namespace rackside::tests

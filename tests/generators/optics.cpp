#include "tests/generators/optics.hpp"

#include <algorithm>
#include <cmath>

namespace rackside::tests {
namespace {

std::vector<float> gaussian(double sigma) {
  const int reach = static_cast<int>(std::ceil(3.5 * sigma));
  std::vector<float> weights;
  double sum = 0;
  for (int i = -reach; i <= reach; ++i) {
    weights.push_back(static_cast<float>(std::exp(-i * i / (2 * sigma * sigma))));
    sum += weights.back();
  }
  for (auto& weight : weights) weight /= static_cast<float>(sum);
  return weights;
}

// Along one line of `count` values that stand `step` apart.
void convolve(float* line, int count, int step, const std::vector<float>& weights,
              std::vector<float>& scratch) {
  const int reach = static_cast<int>(weights.size()) / 2;
  scratch.resize(static_cast<std::size_t>(count));
  for (int i = 0; i < count; ++i) {
    float sum = 0;
    for (int k = -reach; k <= reach; ++k)
      sum += weights[static_cast<std::size_t>(k + reach)] *
             line[std::clamp(i + k, 0, count - 1) * step];
    scratch[static_cast<std::size_t>(i)] = sum;
  }
  for (int i = 0; i < count; ++i) line[i * step] = scratch[static_cast<std::size_t>(i)];
}

// One long table, read from random places: a million frames need noise quickly.
const std::vector<float>& noise_table() {
  static const std::vector<float> table = [] {
    Random random(20310405);
    std::normal_distribution<float> normal;
    std::vector<float> values(1 << 17);
    for (auto& value : values) value = normal(random);
    return values;
  }();
  return table;
}

}  // namespace

float Light::between(double x, double y) const {
  const double cx = std::clamp(x, 0.0, width - 1.001), cy = std::clamp(y, 0.0, height - 1.001);
  const int ix = static_cast<int>(cx), iy = static_cast<int>(cy);
  const auto fx = static_cast<float>(cx - ix), fy = static_cast<float>(cy - iy);
  const float top = at(ix, iy) * (1 - fx) + at(ix + 1, iy) * fx;
  const float bottom = at(ix, iy + 1) * (1 - fx) + at(ix + 1, iy + 1) * fx;
  return top * (1 - fy) + bottom * fy;
}

void blur(Light& light, double sigma) {
  if (sigma <= 0) return;
  const auto weights = gaussian(sigma);
  std::vector<float> scratch;
  for (int y = 0; y < light.height; ++y)
    convolve(&light.at(0, y), light.width, 1, weights, scratch);
  for (int x = 0; x < light.width; ++x)
    convolve(&light.at(x, 0), light.height, light.width, weights, scratch);
}

void smear(Light& light, double length, double angle) {
  if (length <= 0) return;
  const Light still = light;
  const int samples = 2 * static_cast<int>(std::ceil(length)) + 1;
  for (int y = 0; y < light.height; ++y)
    for (int x = 0; x < light.width; ++x) {
      float sum = 0;
      for (int i = 0; i < samples; ++i) {
        const double along = length * ((i + 0.5) / samples - 0.5);
        sum += still.between(x + along * std::cos(angle), y + along * std::sin(angle));
      }
      light.at(x, y) = sum / static_cast<float>(samples);
    }
}

GreyImage expose(const Light& light, double noise, Random& random) {
  const auto& table = noise_table();
  GreyImage image{light.width, light.height, {}};
  image.pixels.resize(light.value.size());
  std::size_t from = 0;
  for (std::size_t i = 0; i < light.value.size(); ++i, ++from) {
    if (i % 256 == 0) from = random() % (table.size() - 256);
    const float value = light.value[i] + static_cast<float>(noise) * table[from];
    image.pixels[i] = static_cast<std::uint8_t>(std::clamp(value + 0.5f, 0.0f, 255.0f));
  }
  return image;
}

}  // namespace rackside::tests

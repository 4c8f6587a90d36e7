#include "labels/reader/plane.hpp"

#include <cmath>

namespace rackside {
namespace {

std::vector<float> half_gaussian(double sigma) {
  std::vector<float> weights;
  const int reach = std::max(1, static_cast<int>(std::ceil(2.5 * sigma)));
  double sum = 0;
  for (int i = 0; i <= reach; ++i) {
    weights.push_back(static_cast<float>(std::exp(-i * i / (2 * sigma * sigma))));
    sum += i == 0 ? weights.back() : 2.0 * weights.back();
  }
  for (float& weight : weights) weight /= static_cast<float>(sum);
  return weights;
}

// One whole row at a time, so that the compiler can take many pixels at once.
void add_scaled(float* to, const float* from, float factor, int count) {
  for (int i = 0; i < count; ++i) to[i] += factor * from[i];
}

Plane smoothed_down(const Plane& plane, const std::vector<float>& weights) {
  Plane result(plane.width, plane.height);
  const int reach = static_cast<int>(weights.size()) - 1;
  for (int y = 0; y < plane.height; ++y)
    for (int k = -reach; k <= reach; ++k)
      add_scaled(result.row(y), plane.row(std::clamp(y + k, 0, plane.height - 1)),
                 weights[static_cast<std::size_t>(std::abs(k))], plane.width);
  return result;
}

Plane smoothed_across(const Plane& plane, const std::vector<float>& weights) {
  Plane result(plane.width, plane.height);
  const int reach = static_cast<int>(weights.size()) - 1;
  std::vector<float> padded(static_cast<std::size_t>(plane.width + 2 * reach));
  for (int y = 0; y < plane.height; ++y) {
    const float* row = plane.row(y);
    std::fill_n(padded.begin(), reach, row[0]);
    std::copy_n(row, plane.width, padded.begin() + reach);
    std::fill_n(padded.end() - reach, reach, row[plane.width - 1]);
    for (int k = -reach; k <= reach; ++k)
      add_scaled(result.row(y), padded.data() + reach + k,
                 weights[static_cast<std::size_t>(std::abs(k))], plane.width);
  }
  return result;
}

// Sums of all values above and left of each pixel; one row and column more than the picture.
std::vector<double> running_sums(const Plane& plane) {
  const auto stride = static_cast<std::size_t>(plane.width + 1);
  std::vector<double> sums(stride * static_cast<std::size_t>(plane.height + 1));
  for (int y = 0; y < plane.height; ++y) {
    double line = 0;
    const double* above = sums.data() + stride * static_cast<std::size_t>(y);
    double* here = sums.data() + stride * static_cast<std::size_t>(y + 1);
    for (int x = 0; x < plane.width; ++x) {
      line += plane.at(x, y);
      here[x + 1] = above[x + 1] + line;
    }
  }
  return sums;
}

}  // namespace

Plane as_plane(const GreyImage& image) {
  Plane plane(image.width, image.height);
  std::ranges::copy(image.pixels, plane.value.begin());
  return plane;
}

GreyImage as_grey(const Plane& plane) {
  GreyImage image{plane.width, plane.height, {}};
  image.pixels.resize(plane.value.size());
  std::ranges::transform(plane.value, image.pixels.begin(), [](float value) {
    return static_cast<std::uint8_t>(std::clamp(value + 0.5f, 0.0f, 255.0f));
  });
  return image;
}

GreyImage cut_out(const GreyImage& image, int left, int top, int width, int height) {
  GreyImage result{width, height, {}};
  result.pixels.reserve(static_cast<std::size_t>(width) * static_cast<std::size_t>(height));
  for (int y = top; y < top + height; ++y) {
    const auto row = image.pixels.begin() + y * image.width + left;
    result.pixels.insert(result.pixels.end(), row, row + width);
  }
  return result;
}

Plane smoothed(const Plane& plane, double sigma) {
  const auto weights = half_gaussian(sigma);
  return smoothed_across(smoothed_down(plane, weights), weights);
}

Plane sharpened(const Plane& plane, double amount, double sigma) {
  Plane result = smoothed(plane, sigma);
  const auto factor = static_cast<float>(amount);
  for (std::size_t i = 0; i < result.value.size(); ++i)
    result.value[i] = plane.value[i] + factor * (plane.value[i] - result.value[i]);
  return result;
}

Plane box_mean(const Plane& plane, int reach) {
  const auto sums = running_sums(plane);
  const auto stride = static_cast<std::size_t>(plane.width + 1);
  Plane result(plane.width, plane.height);
  for (int y = 0; y < plane.height; ++y) {
    const int top = std::max(0, y - reach), bottom = std::min(plane.height, y + reach + 1);
    const double* upper = sums.data() + stride * static_cast<std::size_t>(top);
    const double* lower = sums.data() + stride * static_cast<std::size_t>(bottom);
    for (int x = 0; x < plane.width; ++x) {
      const int left = std::max(0, x - reach), right = std::min(plane.width, x + reach + 1);
      const double sum = lower[right] - lower[left] - upper[right] + upper[left];
      result.row(y)[x] = static_cast<float>(sum / ((right - left) * (bottom - top)));
    }
  }
  return result;
}

Plane halved(const Plane& plane) {
  Plane half(plane.width / 2, plane.height / 2);
  for (int y = 0; y < half.height; ++y) {
    const float* upper = plane.row(2 * y);
    const float* lower = plane.row(2 * y + 1);
    float* out = half.row(y);
    for (int x = 0; x < half.width; ++x)
      out[x] = (upper[2 * x] + upper[2 * x + 1] + lower[2 * x] + lower[2 * x + 1]) / 4;
  }
  return half;
}

GreyImage shrunk(const GreyImage& image, int factor, int left, int top) {
  GreyImage result{(image.width - left) / factor, (image.height - top) / factor, {}};
  result.pixels.reserve(static_cast<std::size_t>(result.width) *
                        static_cast<std::size_t>(result.height));
  std::vector<int> sums(static_cast<std::size_t>(result.width));
  for (int y = 0; y < result.height; ++y) {
    std::ranges::fill(sums, 0);
    for (int row = top + y * factor; row < top + (y + 1) * factor; ++row) {
      const std::uint8_t* pixel = image.pixels.data() + row * image.width + left;
      for (int& sum : sums)
        for (int i = 0; i < factor; ++i) sum += *pixel++;
    }
    for (const int sum : sums)
      result.pixels.push_back(static_cast<std::uint8_t>(sum / (factor * factor)));
  }
  return result;
}

// Each new pixel lies three quarters of the way to the nearer of two old ones, both ways.
GreyImage doubled(const GreyImage& image) {
  const int width = image.width, height = image.height;
  GreyImage result{2 * width, 2 * height, {}};
  result.pixels.resize(4 * image.pixels.size());
  std::vector<int> mixed(static_cast<std::size_t>(width) + 2);  // the border repeated outwards
  for (int y = 0; y < 2 * height; ++y) {
    const auto* near = image.pixels.data() + y / 2 * width;
    const auto* far =
        image.pixels.data() + std::clamp(y / 2 + (y % 2 ? 1 : -1), 0, height - 1) * width;
    for (int x = 0; x < width; ++x) mixed[x + 1] = 3 * near[x] + far[x];
    mixed.front() = mixed[1];
    mixed.back() = mixed[width];
    auto* row = result.pixels.data() + y * 2 * width;
    for (int x = 0; x < width; ++x) {
      row[2 * x] = static_cast<std::uint8_t>((3 * mixed[x + 1] + mixed[x] + 8) / 16);
      row[2 * x + 1] = static_cast<std::uint8_t>((3 * mixed[x + 1] + mixed[x + 2] + 8) / 16);
    }
  }
  return result;
}

}  // namespace rackside

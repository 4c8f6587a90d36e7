#include "labels/proof/wear.hpp"

#include <algorithm>
#include <cmath>

namespace rackside {
namespace {

constexpr double white = 255.0;

std::size_t at(const GreyImage& image, int x, int y) {
  return static_cast<std::size_t>(y) * static_cast<std::size_t>(image.width) +
         static_cast<std::size_t>(x);
}

GreyImage blank(int width, int height) {
  return {width, height,
          std::vector<std::uint8_t>(static_cast<std::size_t>(width) *
                                    static_cast<std::size_t>(height))};
}

// The darkest of the pixels up to `reach` before and after, along rows.
GreyImage darkest_in_rows(const GreyImage& image, int reach) {
  GreyImage result = image;
  for (int y = 0; y < image.height; ++y) {
    const std::uint8_t* from = &image.pixels[at(image, 0, y)];
    std::uint8_t* to = &result.pixels[at(image, 0, y)];
    for (int step = 1; step <= reach; ++step)
      for (int x = 0; x + step < image.width; ++x) {
        to[x] = std::min(to[x], from[x + step]);
        to[x + step] = std::min(to[x + step], from[x]);
      }
  }
  return result;
}

GreyImage darkest_in_columns(const GreyImage& image, int reach) {
  GreyImage result = image;
  const auto darken = [&](int to_row, int from_row) {
    std::uint8_t* to = &result.pixels[at(image, 0, to_row)];
    const std::uint8_t* from = &image.pixels[at(image, 0, from_row)];
    for (int x = 0; x < image.width; ++x) to[x] = std::min(to[x], from[x]);
  };
  for (int y = 0; y < image.height; ++y)
    for (int step = 1; step <= reach; ++step) {
      if (y + step < image.height) darken(y, y + step);
      if (y - step >= 0) darken(y, y - step);
    }
  return result;
}

double distance_to_segment(double x, double y, Point from, Point to) {
  const double dx = to.x - from.x;
  const double dy = to.y - from.y;
  const double length_squared = dx * dx + dy * dy;
  const double along =
      length_squared > 0
          ? std::clamp(((x - from.x) * dx + (y - from.y) * dy) / length_squared, 0.0, 1.0)
          : 0.0;
  return std::hypot(x - from.x - along * dx, y - from.y - along * dy);
}

}  // namespace

GreyImage with_print_gain(const GreyImage& image, int pixels) {
  return darkest_in_columns(darkest_in_rows(image, pixels), pixels);
}

GreyImage paled(const GreyImage& image, int levels) {
  GreyImage result = image;
  // In the dim light of a rack the picture is dark altogether.
  constexpr double darkest = 50;
  for (std::uint8_t& pixel : result.pixels)
    pixel = static_cast<std::uint8_t>(std::lround(darkest + pixel * levels / white));
  return result;
}

GreyImage scratched(GreyImage image, Point from, Point to, double width) {
  const auto bounds = [&](double a, double b, int end) {
    return std::pair{std::max(0, static_cast<int>(std::min(a, b) - width)),
                     std::min(end, static_cast<int>(std::max(a, b) + width) + 1)};
  };
  const auto [left, right] = bounds(from.x, to.x, image.width);
  const auto [top, bottom] = bounds(from.y, to.y, image.height);
  for (int y = top; y < bottom; ++y)
    for (int x = left; x < right; ++x)
      if (distance_to_segment(x + 0.5, y + 0.5, from, to) <= width / 2)
        image.pixels[at(image, x, y)] = 255;
  return image;
}

GreyImage around_cylinder(const GreyImage& image, double centre_x, double radius) {
  // Of the light, this share falls off with the turn of the surface away from the viewer.
  constexpr double falling_off = 0.3;
  GreyImage result = blank(image.width, image.height);
  for (int x = 0; x < image.width; ++x) {
    const double sine = std::clamp((x + 0.5 - centre_x) / radius, -1.0, 1.0);
    const double source = centre_x + radius * std::asin(sine) - 0.5;
    const double light = 1 - falling_off + falling_off * std::sqrt(1 - sine * sine);
    const int left = std::clamp(static_cast<int>(std::floor(source)), 0, image.width - 1);
    const int right = std::min(left + 1, image.width - 1);
    const double share = std::clamp(source - left, 0.0, 1.0);
    for (int y = 0; y < image.height; ++y) {
      const double value = image.at(left, y) * (1 - share) + image.at(right, y) * share;
      result.pixels[at(image, x, y)] = static_cast<std::uint8_t>(std::lround(value * light));
    }
  }
  return result;
}

GreyImage resampled(const GreyImage& image, int width, int height) {
  GreyImage result = blank(width, height);
  std::vector<int> columns(static_cast<std::size_t>(width));
  for (int x = 0; x < width; ++x)
    columns[static_cast<std::size_t>(x)] = static_cast<int>((x + 0.5) * image.width / width);
  for (int y = 0; y < height; ++y) {
    const std::uint8_t* from =
        &image.pixels[at(image, 0, static_cast<int>((y + 0.5) * image.height / height))];
    std::uint8_t* to = &result.pixels[at(result, 0, y)];
    for (const int column : columns) *to++ = from[column];
  }
  return result;
}

}  // namespace rackside

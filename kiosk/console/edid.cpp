#include "kiosk/console/edid.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace rackside::kiosk {
namespace {

constexpr std::size_t block = 128;
constexpr std::array<std::uint8_t, 8> beginning{0x00, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0x00};

bool whole(std::span<const std::uint8_t> edid) {
  if (edid.size() < block) return false;
  const auto base = edid.first<block>();
  if (!std::ranges::equal(base.first(beginning.size()), beginning)) return false;
  return std::accumulate(base.begin(), base.end(), 0) % 256 == 0;
}

// Zero by zero where it does not tell, as with a projector.
DisplaySize in_centimetres(std::span<const std::uint8_t> edid) {
  // One of them alone is a proportion, not a size.
  if (edid[21] == 0 || edid[22] == 0) return {};
  return {edid[21] * 10.0, edid[22] * 10.0};
}

DisplaySize of_first_timing(std::span<const std::uint8_t> edid) {
  const auto timing = edid.subspan(54, 18);
  const bool no_timing = timing[0] == 0 && timing[1] == 0;
  const int width = timing[12] | (timing[14] & 0xF0) << 4;
  const int height = timing[13] | (timing[14] & 0x0F) << 8;
  if (no_timing || width == 0 || height == 0) return {};
  return {static_cast<double>(width), static_cast<double>(height)};
}

bool agree(DisplaySize a, DisplaySize b) {
  constexpr double rounding = 10;  // of the centimetres; some makers round up, some down
  return std::abs(a.width_mm - b.width_mm) <= rounding &&
         std::abs(a.height_mm - b.height_mm) <= rounding;
}

}  // namespace

std::optional<DisplaySize> display_size(std::span<const std::uint8_t> edid) {
  if (!whole(edid)) return std::nullopt;
  const DisplaySize rough = in_centimetres(edid);
  const DisplaySize fine = of_first_timing(edid);
  if (rough == DisplaySize{} && fine == DisplaySize{}) return std::nullopt;
  if (fine == DisplaySize{}) return rough;
  if (rough == DisplaySize{} || agree(rough, fine)) return fine;
  return rough;
}

std::optional<double> plausible_density(int width, int height, DisplaySize size) {
  if (width <= 0 || height <= 0 || size.width_mm <= 0 || size.height_mm <= 0) return std::nullopt;
  if ((width > height) != (size.width_mm > size.height_mm))
    std::swap(size.width_mm, size.height_mm);
  const double across = width / size.width_mm;
  const double down = height / size.height_mm;
  const double diagonal = std::hypot(size.width_mm, size.height_mm);
  const double density = std::hypot(width, height) / diagonal;
  if (diagonal < 80 || diagonal > 1000 || density < 2 || density > 40) return std::nullopt;
  if (std::abs(across - down) > 0.15 * density) return std::nullopt;
  return density;
}

}  // namespace rackside::kiosk

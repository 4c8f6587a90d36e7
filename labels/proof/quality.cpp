#include "labels/proof/quality.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "labels/symbol/codewords.hpp"

namespace rackside {
namespace {

constexpr double ink = 0.06;
constexpr double paper = 0.84;
constexpr double aperture = 0.8;

// The least values for A, B, C and D, in percent (ISO/IEC 15415).
using Limits = std::array<double, 4>;
constexpr Limits contrast_limits{70, 55, 40, 20};
constexpr Limits modulation_limits{50, 40, 30, 20};
constexpr Limits unused_limits{62, 50, 37, 25};

Grade grade_of(double percent, const Limits& limits) {
  for (std::size_t i = 0; i < limits.size(); ++i)
    if (percent >= limits[i]) return static_cast<Grade>(i);
  return Grade::F;
}

SymbolVersion version_of(const Symbol& symbol) {
  return symbol.side == side_of(SymbolVersion::V1) ? SymbolVersion::V1 : SymbolVersion::V2;
}

double unused_percent(std::ptrdiff_t wrong, SymbolVersion version) {
  const int correctable = correctable_codewords(version);
  return 100.0 * std::max(0.0, 1.0 - static_cast<double>(wrong) / correctable);
}

// For each codeword the weakest of its modules, in percent; negative where a module lies on the
// wrong side of the threshold.
std::vector<double> modulations(const Reflectances& measured, const Symbol& symbol,
                                double threshold, double contrast) {
  std::vector<double> list;
  for (const CodewordPlaces& codeword : codeword_places(version_of(symbol))) {
    double weakest = 100;
    for (const ModulePlace place : codeword) {
      const double value =
          measured[static_cast<std::size_t>(place.row * symbol.side + place.column)];
      const double beyond =
          symbol.is_dark(place.column, place.row) ? threshold - value : value - threshold;
      weakest = std::min(weakest, 200 * beyond / contrast);
    }
    list.push_back(weakest);
  }
  return list;
}

// Weak codewords may be spent on error correction: at each level those below it count as wrong,
// and the best level that the correction can carry is the grade. The modulation is that of the
// weakest codeword that was not given up.
void grade_modulation(const std::vector<double>& codewords, SymbolVersion version,
                      QualityEstimate& estimate) {
  estimate.modulation = std::max(0.0, *std::ranges::min_element(codewords));
  for (std::size_t level = 0; level < modulation_limits.size(); ++level) {
    const double limit = modulation_limits[level];
    const auto weak = std::ranges::count_if(codewords, [&](double value) { return value < limit; });
    const Grade carried = grade_of(unused_percent(weak, version), unused_limits);
    const Grade grade = std::max(static_cast<Grade>(level), carried);
    if (grade >= estimate.modulation_grade) continue;
    estimate.modulation_grade = grade;
    double weakest = 100;
    for (const double value : codewords)
      if (value >= limit) weakest = std::min(weakest, value);
    estimate.modulation = weakest;
  }
}

}  // namespace

char letter_of(Grade grade) {
  switch (grade) {
    case Grade::A: return 'A';
    case Grade::B: return 'B';
    case Grade::C: return 'C';
    case Grade::D: return 'D';
    case Grade::F: return 'F';
  }
  return 'F';
}

Grade QualityEstimate::overall() const {
  return std::max({contrast_grade, modulation_grade, unused_grade});
}

Reflectances reflectances_of(const GreyImage& image, int side, double x, double y, double module) {
  Reflectances list;
  const auto pixel = [](double place, int end) {
    return std::clamp(static_cast<int>(std::lround(place)), 0, end);
  };
  const double inset = (1 - aperture) / 2 * module;
  for (int row = 0; row < side; ++row)
    for (int column = 0; column < side; ++column) {
      const int left = pixel(x + column * module + inset, image.width - 1);
      const int right = std::max(left + 1, pixel(x + (column + 1) * module - inset, image.width));
      const int top = pixel(y + row * module + inset, image.height - 1);
      const int bottom = std::max(top + 1, pixel(y + (row + 1) * module - inset, image.height));
      double sum = 0;
      for (int py = top; py < bottom; ++py)
        for (int px = left; px < right; ++px) sum += image.at(px, py);
      const double light = sum / 255 / ((right - left) * (bottom - top));
      list.push_back(ink + light * (paper - ink));
    }
  return list;
}

QualityEstimate estimate_quality(const Reflectances& measured, const Symbol& symbol) {
  const auto [darkest, lightest] = std::ranges::minmax(measured);
  const double contrast = lightest - darkest;
  QualityEstimate estimate;
  estimate.contrast = 100 * contrast;
  estimate.contrast_grade = grade_of(estimate.contrast, contrast_limits);
  if (contrast <= 0) return estimate;
  const auto codewords = modulations(measured, symbol, (darkest + lightest) / 2, contrast);
  grade_modulation(codewords, version_of(symbol), estimate);
  const auto wrong = std::ranges::count_if(codewords, [](double value) { return value < 0; });
  estimate.unused = unused_percent(wrong, version_of(symbol));
  estimate.unused_grade = grade_of(estimate.unused, unused_limits);
  return estimate;
}

}  // namespace rackside

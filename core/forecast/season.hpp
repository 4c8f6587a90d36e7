#pragma once
// The season as a tilt of each day's chance: a bell around one day of the year.

#include <array>
#include <cstddef>

#include "core/forecast/level.hpp"

namespace rackside {

/// The year in as many parts; the bell's peak is looked for at every fifteenth of them.
inline constexpr std::size_t year_parts = 360;
inline constexpr std::size_t season_peaks = 24;

/// Which part of the year a wall day is in.
[[nodiscard]] std::size_t year_part(double day);

/// What is believed of the time at which moults peak, one weight a peak.
using PeakWeights = std::array<double, season_peaks>;

struct Season {
  double sharpness = 0;  // concentration of a von Mises law of the year
  double kept = 0;       // share of grown animals that keep to it, or the chance that this one does
  /// How many times as far lengths scatter where the season, and not the last moult, says when:
  /// what came late in its season is followed by a short cycle.
  double loosened = 1;
  PeakWeights peaks{};  // sum 1
  bool operator==(const Season&) const = default;
};

/// What is believed of an animal's lengths if it keeps to a season.
[[nodiscard]] LevelFilter in_season(LevelFilter filter, double loosened);

/// A bell of the year: how much likelier a moult is so many parts of the year after the peak.
class YearBell {
 public:
  explicit YearBell(double sharpness);

  [[nodiscard]] double at(std::size_t part, std::size_t peak) const {
    return height_[(part + year_parts - peak * (year_parts / season_peaks)) % year_parts];
  }

 private:
  std::array<double, year_parts> height_{};
};

}  // namespace rackside

#pragma once
// The season as a tilt of each day's chance.

#include <array>

namespace rackside {

/// Weights of the cosine and the sine of the year, then of the half year, on the log scale. All 0:
/// no season.
using Season = std::array<double, 4>;

/// Cosine and sine of the year at a day, then of the half year.
using YearWaves = std::array<double, 4>;
[[nodiscard]] YearWaves year_waves(double day);

/// How much likelier than on average a moult is on a day of these waves.
[[nodiscard]] double season_tilt(const Season& season, const YearWaves& waves);

/// How much likelier than on average a moult is on this day; 1 where no season shows.
[[nodiscard]] double season_tilt(const Season& season, double day);

}  // namespace rackside

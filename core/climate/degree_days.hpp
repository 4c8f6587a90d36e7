#pragma once
// Thermal time: how much of a day's warmth counts for growth.

namespace rackside {

/// One day's temperatures and the two thresholds between which growth goes with temperature, all
/// in one unit (degrees C or F). Above `upper` it goes on as at `upper` (horizontal cut-off).
struct DayOfWarmth {
  double minimum = 0;
  double maximum = 0;
  double lower = 0;
  double upper = 0;
};

/// Degree-days of one day, the temperature following a sine between its extremes.
/// Baskerville & Emin 1969, Ecology 50:514-517; Allen 1976, Environ. Entomol. 5:388-396.
[[nodiscard]] double degree_days_by_sine(const DayOfWarmth& day);

/// The same with straight lines between the extremes.
[[nodiscard]] double degree_days_by_triangle(const DayOfWarmth& day);

}  // namespace rackside

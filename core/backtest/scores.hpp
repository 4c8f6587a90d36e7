#pragma once
// How good a forecast was, once it is known what happened. All scores are proper: nothing is gained
// by saying anything but what one believes.

#include <array>
#include <span>
#include <vector>

#include "core/forecast/forecast.hpp"

namespace rackside {

/// Continuous ranked probability score from the quantiles 0.05 to 0.95: twice the mean pinball loss
/// (Gneiting & Raftery 2007, JASA 102:359-378, section 4.2 and 6.2), in the unit of `happened`.
/// Smaller is better; a sure and right forecast scores 0.
[[nodiscard]] double crps_by_quantiles(std::span<const double, moult_quantiles> quantiles,
                                       double happened);

/// The same of a sample of equally likely values. `Fair` takes off what the size of the sample
/// adds (Ferro 2014, Q. J. R. Meteorol. Soc. 140:1917-1923).
enum class SampleScore { AsItIs, Fair };
[[nodiscard]] double crps_of_sample(std::span<const double> sample, double happened,
                                    SampleScore kind = SampleScore::AsItIs);

/// Of a normal and of a log-normal distribution, in closed form (Jordan, Krueger & Lerch 2019,
/// J. Stat. Softw. 90(12), appendix A).
[[nodiscard]] double crps_of_normal(double mean, double deviation, double happened);
[[nodiscard]] double crps_of_lognormal(double log_mean, double log_deviation, double happened);

/// Where `happened` fell in the forecast: 0 below all quantiles to 1 above all, with the place
/// between two quantiles by interpolation (probability integral transform).
[[nodiscard]] double place_in(std::span<const double, moult_quantiles> quantiles, double happened);

/// A yes-or-no forecast and what came of it.
struct Call {
  double probability = 0;
  bool happened = false;
};
[[nodiscard]] double brier_score(std::span<const Call> calls);

/// One row of the reliability table: of the calls between two tenths, the mean probability and the
/// share that happened.
struct ReliabilityRow {
  double said = 0, happened = 0;
  std::size_t calls = 0;
};
[[nodiscard]] std::array<ReliabilityRow, 10> reliability(std::span<const Call> calls);

}  // namespace rackside

// A cohort grown by the priors alone, against the published one of a slow-growing species. This is
// a fit and not a check: the length of slings' cycles, the drift, the pull and what a slow grower
// adds were chosen so that this cohort comes out. It holds them there.

#include <algorithm>
#include <cmath>

#include "core/forecast/level_numbers.hpp"
#include "tests/frame.hpp"

using namespace rackside;

TEST_CASE("a Grammostola vachoni cohort under the priors grows up as the one they were fitted to") {
  // Zool. Anz. 293:37-45 (2021), doi:10.1016/j.jcz.2021.05.005, abstract: 1 to 2 moults a year,
  // intervals lengthen, the 8th moult at 4.03 years, the 11th at 7.03.
  const CyclePriors& priors = documented_priors().cycle;
  const LevelParameters p = prior_parameters(priors);
  std::mt19937_64 dice(3);
  std::normal_distribution<double> normal;
  std::vector<double> eighth, eleventh, first_third, last_third;
  for (int animal = 0; animal < 400; ++animal) {
    double level = p.start[1] + priors.slow_grower + p.known_start_spread * normal(dice);
    double age = 0;
    for (int moult = 1; moult <= 11; ++moult) {
      const double days = std::exp(level + p.within * normal(dice));
      age += days;
      (moult <= 4 ? first_third : last_third).push_back(days);
      if (moult == 8) eighth.push_back(age / 365.25);
      level += p.drift - p.pull * (level - p.pull_at) + p.wander * normal(dice);
    }
    eleventh.push_back(age / 365.25);
  }
  const auto median = [](std::vector<double> values) {
    std::ranges::nth_element(values, values.begin() + static_cast<long>(values.size() / 2));
    return values[values.size() / 2];
  };
  CHECK(median(eleventh) == Approx(7.03).margin(1.5));
  CHECK(median(eighth) == Approx(4.03).margin(1.0));
  CHECK(median(last_third) > 1.4 * median(first_third));
  CHECK(11 / median(eleventh) > 1);
  CHECK(11 / median(eleventh) < 2);
}

// Scores against published values: Jordan, Krueger & Lerch 2019, J. Stat. Softw. 90(12); Gneiting &
// Raftery 2007, JASA 102:359-378; as printed in the tests of the scoringRules and properscoring
// libraries.

#include "core/backtest/scores.hpp"

#include <boost/math/distributions/normal.hpp>
#include <cmath>

#include "tests/frame.hpp"

using namespace rackside;

TEST_CASE("closed forms of the CRPS give the published values") {
  CHECK(crps_of_lognormal(0.1, 0.9, 3) == Approx(1.13552645).epsilon(0).margin(1e-8));
  CHECK(crps_of_normal(0, 1, -3) == Approx(2.43657473).epsilon(0).margin(1e-8));
  CHECK(crps_of_normal(0, 1, 0) == Approx(0.23369497725510913).epsilon(0).margin(1e-12));
}

TEST_CASE("the CRPS of a sample gives the published values") {
  const std::vector<double> sample{1, 2, 3, 4};
  CHECK(crps_of_sample(sample, 2.5) == Approx(0.375).epsilon(0).margin(1e-12));
  CHECK(crps_of_sample(sample, 2.5, SampleScore::Fair) ==
        Approx(0.1666667).epsilon(0).margin(1e-6));
}

TEST_CASE(
    "the score by quantiles comes near the closed form and never favours a shifted forecast") {
  const boost::math::normal standard(0, 1);
  std::array<double, moult_quantiles> right{}, shifted{};
  for (std::size_t i = 0; i < moult_quantiles; ++i) {
    right[i] = boost::math::quantile(standard, static_cast<double>(i + 1) / 20);
    shifted[i] = right[i] + 0.5;
  }
  CHECK(crps_by_quantiles(right, -3) == Approx(crps_of_normal(0, 1, -3)).epsilon(0.05));
  CHECK(crps_by_quantiles(right, 0) == Approx(crps_of_normal(0, 1, 0)).epsilon(0.06));
  double mean_right = 0, mean_shifted = 0;
  for (int i = 0; i < 999; ++i) {
    const double y = boost::math::quantile(standard, (i + 0.5) / 999);
    mean_right += crps_by_quantiles(right, y);
    mean_shifted += crps_by_quantiles(shifted, y);
  }
  CHECK(mean_right < mean_shifted);
}

TEST_CASE("places spread evenly when outcomes come from the forecast") {
  std::array<double, moult_quantiles> even{};
  for (std::size_t i = 0; i < moult_quantiles; ++i) even[i] = static_cast<double>(i + 1);
  CHECK(place_in(even, 10) == Approx(0.5));
  CHECK(place_in(even, 7.5) == Approx(0.375));
  CHECK(place_in(even, -4) < 0.05);
  CHECK(place_in(even, 40) > 0.95);
}

TEST_CASE("the Brier score and the reliability table add up") {
  const std::vector<Call> calls{
      {0.9, true}, {0.8, false}, {0.1, false}, {0.15, false}, {1.0, true}};
  CHECK(brier_score(calls) == Approx((0.01 + 0.64 + 0.01 + 0.0225 + 0) / 5));
  const auto rows = reliability(calls);
  CHECK(rows[1].calls == 2);
  CHECK(rows[1].said == Approx(0.125));
  CHECK(rows[9].calls == 2);
  CHECK(rows[9].happened == Approx(1));
}

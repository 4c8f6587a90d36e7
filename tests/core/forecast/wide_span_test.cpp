// A moult somewhere in a span that is wide for the cycles beside it, against integrals over all
// days on which it may have been.

#include <cmath>

#include "core/forecast/belief.hpp"
#include "core/forecast/normal.hpp"
#include "tests/frame.hpp"

using namespace rackside;

namespace {

constexpr double between = 0.15, within = 0.2, usual = 15;

LevelParameters plain() {
  LevelParameters p;
  p.start[static_cast<std::size_t>(Stage::Juvenile)] = std::log(usual);
  p.start_spread = between;
  p.within = within;
  return p;  // no drift, no wander, nothing unseen, nothing out of line
}

double chance(double low, double high, double level) {
  const auto below = [&](double days) {
    return days > 0 ? normal_cdf((std::log(days) - level) / within) : 0;
  };
  return below(high) - below(low);
}

// A cycle from day 0 to a moult between days 10 and 20, and one from there to day 30 to 33, summed
// over levels and days.
double by_integral() {
  double sum = 0;
  constexpr double step = 0.05;
  for (double z = -5; z < 5; z += 0.02) {
    const double level = std::log(usual) + between * z;
    double both = 0;
    for (double day = 10; day < 20 - step / 2; day += step)
      both +=
          chance(day, day + step, level) * chance(30 - day - step / 2, 33 - day - step / 2, level);
    sum += both * normal_density(z) * 0.02;
  }
  return std::log(sum);
}

}  // namespace

TEST_CASE("two cycles that share a wide span are as likely as over all its days") {
  LevelFilter filter(plain(), {}, Stage::Juvenile, {});
  double told = filter.observe({.low = std::log(10), .high = std::log(20), .wide_end = true});
  constexpr double part = 10.0 / span_parts / usual;
  told += filter.observe({.low = std::log(30 - 15),
                          .high = std::log(33 - 15),
                          .noise = part * part / 12,
                          .start_width = 10});
  CHECK(told == Approx(by_integral()).epsilon(0).margin(0.01));
}

TEST_CASE("an early end in a wide span goes with a low level, a late one with a high one") {
  LevelFilter filter(plain(), {}, Stage::Juvenile, {});
  filter.observe({.low = std::log(10), .high = std::log(20), .wide_end = true});
  const auto parts = filter.length_by_part();
  double sum = 0;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    sum += parts[i].weight;
    if (i > 0) CHECK(parts[i].length[0].mean > parts[i - 1].length[0].mean);
  }
  CHECK(sum == Approx(1));
  CHECK(parts[1].weight > parts[0].weight);  // 15 days are more likely than 11
}

TEST_CASE("the next moult after a wide span is as over all days on which the last may have been") {
  Character character;
  const LengthMixture length{{{1, std::log(usual), within}, {0, std::log(usual), within}}};
  character.lengths.all = character.next_length = length;
  character.habits = prior_habits(documented_priors(), {}, Stage::Juvenile);
  character.lengths.by_part.assign(span_parts, {1.0 / span_parts, length});
  RunningCycle cycle{.start_earliest = -8, .start_latest = 0};
  const Belief belief = believe(character, cycle, 0);
  double before = 0, all = 0;  // of the median, over all days of the span
  const double median = quantile(belief, 0.5);
  for (double day = -8 + 0.005; day < 0; day += 0.01) {
    before += chance(-day, median - day, std::log(usual));
    all += chance(-day, 1000 - day, std::log(usual));
  }
  CHECK(before / all == Approx(0.5).epsilon(0).margin(0.01));
}

// The censored normal and the level filter against published and reference values.

#include "core/forecast/level.hpp"

#include <cmath>
#include <fstream>
#include <map>
#include <sstream>

#include "core/forecast/level_fit.hpp"
#include "core/forecast/level_numbers.hpp"
#include "core/forecast/maximise.hpp"
#include "core/forecast/normal.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

std::vector<std::vector<std::string>> rows_of(const std::filesystem::path& file) {
  std::ifstream in(file);
  std::string line;
  std::getline(in, line);
  std::vector<std::vector<std::string>> rows;
  while (std::getline(in, line)) {
    std::vector<std::string> cells;
    std::istringstream parts(line);
    for (std::string cell; std::getline(parts, cell, ',');) cells.push_back(cell);
    rows.push_back(std::move(cells));
  }
  return rows;
}

struct Observed {
  double low, high, treated;
};

// Lognormal, interval-censored, by the same pieces the model is fitted with.
struct Survival {
  std::vector<double> at;
  double log_likelihood;
};
Survival fit_survival(const std::vector<Observed>& data, bool with_treatment) {
  const Objective objective = [&](const std::vector<double>& at) {
    double sum = 0;
    for (const Observed& o : data)
      sum += std::log(truncate_normal(at[0] + (with_treatment ? at[2] * o.treated : 0),
                                      std::exp(at[1]), std::log(o.low), std::log(o.high))
                          .mass);
    return sum;
  };
  std::vector<double> start{3, 0};
  if (with_treatment) start.push_back(0);
  const auto at = maximise(objective, start, {.most_steps = 300, .tolerance = 1e-12});
  return {at, objective(at)};
}

std::vector<Observed> cosmesis(const std::filesystem::path& file, const std::string& only = "") {
  std::vector<Observed> data;
  for (const auto& row : rows_of(file)) {
    if (!only.empty() && row[2] != only) continue;
    data.push_back({std::stod(row[0]), row[1] == "Inf" ? HUGE_VAL : std::stod(row[1]),
                    row[2] == "\"RCT\"" ? 1.0 : 0.0});
  }
  return data;
}

LevelParameters plain(double between, double within) {
  LevelParameters p;
  p.start_spread = between;
  p.within = p.adult_within = within;
  return p;  // no drift, no wander, nothing unseen, nothing out of line
}

}  // namespace

TEST_CASE("interval-censored lognormal regression gives the reference's estimates") {
  // Data: Finkelstein & Wolfe 1985, Biometrics 41:933-945. Values: R 4.2.2, survival 3.5-3,
  // survreg.
  const auto file = outside_data("breast_cosmesis_94.csv");
  if (!file) {
    WARN("skipped: not here");
    return;
  }
  const Survival both = fit_survival(cosmesis(*file), true);
  CHECK(both.at[0] == Approx(3.547875).margin(1e-4));
  CHECK(both.at[2] == Approx(-0.421000).margin(1e-4));
  CHECK(std::exp(both.at[1]) == Approx(0.882141).margin(1e-4));
  CHECK(both.log_likelihood == Approx(-146.622332).margin(1e-4));
  const Survival one = fit_survival(cosmesis(*file, "\"RT\""), false);
  CHECK(one.at[0] == Approx(3.750333).margin(1e-4));
  CHECK(std::exp(one.at[1]) == Approx(1.308045).margin(1e-4));
  CHECK(one.log_likelihood == Approx(-64.734899).margin(1e-4));
}

TEST_CASE("shortcuts of the truncated normal stay within what their contract says") {
  double worst_mass = 0, worst_mean = 0;
  for (double low = -4; low < 4; low += 0.05)
    for (const double width : {0.001, 0.029, 0.031, 0.3, 0.69}) {
      const Truncated t = truncate_normal(0, 1, low, low + width);
      const double mass = normal_mass(low, low + width);
      const double mean = (normal_density(low) - normal_density(low + width)) / mass;
      worst_mass = std::max(worst_mass, std::abs(t.mass / mass - 1));
      if (width > 0.01) worst_mean = std::max(worst_mean, std::abs(t.mean - mean));
    }
  CHECK(worst_mass < 6e-4);
  CHECK(worst_mean < 1e-3);
  const Truncated tail = truncate_normal(0, 1, 10, HUGE_VAL);  // from memory: Mills' ratio
  CHECK(tail.mass == Approx(7.619853e-24).epsilon(1e-5));
  CHECK(truncate_normal(0, 1, 60, 61).mass > 0);
}

TEST_CASE("the filter's spreads are those of a mixed model by restricted likelihood") {
  // Data: Long et al. 2013, PLoS ONE 8(4):e60959; log degree-days ~ stage + treatment + (1 | crab).
  // Values: R 4.2.2, nlme, REML: between 0.09756, within 0.14352, log likelihood 33.55799.
  const auto file = outside_data("red_king_crab_intermoults.csv");
  if (!file) {
    WARN("skipped: not here");
    return;
  }
  struct Row {
    double y;
    std::vector<double> x;
  };
  std::map<std::string, std::vector<Row>> crabs;
  std::vector<double> plain_days;
  for (const auto& row : rows_of(*file)) {
    if (row[6].empty()) continue;
    plain_days.push_back(std::stod(row[6]));
    std::vector<double> x{1, row[0] == "Control" ? 0.0 : 1.0, 0, 0, 0};
    if (row[2][0] > '2') x[static_cast<std::size_t>(row[2][0] - '1')] = 1;
    crabs[row[0] + row[1]].push_back({std::log(plain_days.back()), x});
  }
  REQUIRE(plain_days.size() == 114);
  constexpr std::size_t p = 5;
  // The filter whitens: what is left of y, and of each column of x, given what came before.
  const Objective restricted = [&](const std::vector<double>& at) {
    const LevelParameters parameters = plain(std::exp(at[0]), std::exp(at[1]));
    double log_variances = 0;
    std::vector<std::vector<double>> whitened;
    for (const auto& [name, rows] : crabs) {
      std::vector<LevelFilter> filters(p + 1, LevelFilter(parameters, {}, Stage::Juvenile, {}));
      for (const Row& row : rows) {
        std::vector<double> line;
        for (std::size_t c = 0; c <= p; ++c) {
          const double value = c < p ? row.x[c] : row.y;
          const double deviation = filters[c].length()[0].deviation;
          line.push_back((value - filters[c].expected()) / deviation);
          if (c == p) log_variances += 2 * std::log(deviation);
          filters[c].observe({.low = value - 1e-7, .high = value + 1e-7});
        }
        whitened.push_back(std::move(line));
      }
    }
    // Gaussian elimination of (X'X | X'y | y'y).
    std::vector<std::vector<double>> m(p + 1, std::vector<double>(p + 1));
    for (const auto& line : whitened)
      for (std::size_t i = 0; i <= p; ++i)
        for (std::size_t j = 0; j <= p; ++j) m[i][j] += line[i] * line[j];
    double log_determinant = 0;
    for (std::size_t k = 0; k < p; ++k) {
      log_determinant += std::log(m[k][k]);
      for (std::size_t i = k + 1; i <= p; ++i) {
        const double factor = m[i][k] / m[k][k];
        for (std::size_t j = k; j <= p; ++j) m[i][j] -= factor * m[k][j];
      }
    }
    const auto n = static_cast<double>(whitened.size());
    return -0.5 *
           ((n - p) * std::log(2 * 3.14159265358979) + log_variances + log_determinant + m[p][p]);
  };
  const auto at = maximise(restricted, {-2, -2}, {.most_steps = 100, .tolerance = 1e-10});
  CHECK(std::exp(at[0]) == Approx(0.09756).margin(1e-3));
  CHECK(std::exp(at[1]) == Approx(0.14352).margin(1e-3));
  CHECK(restricted(at) == Approx(33.55799).margin(1e-3));
}

TEST_CASE("what is left of a cycle when an animal comes has a density that adds up to one") {
  // However much lengths scatter: a likelihood that grows with the scatter lets a fit run away.
  for (const double within : {0.14, 0.5, 1.2}) {
    LevelParameters p = plain(0.2, within);
    p.start[static_cast<std::size_t>(Stage::Juvenile)] = std::log(130);
    p.wide_share = 0.05;
    p.wide_factor = 1.5;
    p.food = 0.5;
    double sum = 0;
    constexpr double step = 0.002;
    for (double log_days = -20; log_days < 16; log_days += step) {
      LevelFilter filter(p, {}, Stage::Juvenile, {});
      const double density = filter.observe(
          {.low = log_days, .start = LoggedCycle::Start::Arrival, .meals = {140, 10}});
      sum += std::exp(density + log_days) * step;
    }
    CHECK(sum == Approx(1).margin(1e-4));
  }
}

TEST_CASE("an interval twice as long as expected is read as a moult nobody saw") {
  const LevelParameters p = prior_parameters(documented_priors().cycle);
  LevelFilter filter(p, {}, Stage::Juvenile, {});
  const auto cycle = [](double days) {
    return LoggedCycle{.low = std::log(days - 0.5), .high = std::log(days + 0.5)};
  };
  for (int i = 0; i < 4; ++i) filter.observe(cycle(130 + 15 * i));
  CHECK(filter.hid_a_moult() < 0.05);
  const double before = filter.expected();
  filter.observe(cycle(2.1 * std::exp(before)));
  CHECK(filter.hid_a_moult() > 0.7);
  CHECK(std::abs(filter.expected() - before) < 0.4);
}

TEST_CASE("a fit finds the spreads and the drift of lengths drawn from them") {
  std::mt19937_64 dice(7);
  std::normal_distribution<double> normal;
  std::vector<SpeciesHistories> histories;
  for (int s = 0; s < 6; ++s) {
    SpeciesHistories species{.species = "Inventa " + std::to_string(s)};
    const double shift = 0.3 * normal(dice);
    for (int a = 0; a < 15; ++a) {
      CycleHistory animal{.stage = Stage::Juvenile};
      double level = std::log(100) + shift + 0.1 * normal(dice);
      for (int c = 0; c < 8; ++c, level += 0.08) {
        const double y = level + 0.2 * normal(dice);
        animal.cycles.push_back({.low = y - 0.005, .high = y + 0.005});
      }
      species.animals.push_back(animal);
    }
    histories.push_back(species);
  }
  const LevelModel fit = fit_levels(histories, documented_priors().cycle);
  CHECK(fit.parameters.within == Approx(0.2).margin(0.03));
  CHECK(fit.parameters.drift + 0 == Approx(0.08).margin(0.03));
  CHECK(fit.parameters.unseen_share < 0.06);
}

TEST_CASE(
    "how far instars are off the line is learnt: far where they are, hardly where they are not") {
  std::mt19937_64 dice(11);
  std::normal_distribution<double> normal;
  for (const double off : {0.0, 0.5}) {
    SpeciesHistories species{.species = "Inventa prima"};
    for (int a = 0; a < 25; ++a) {
      CycleHistory animal{.stage = Stage::Juvenile, .instar = 3};
      for (int c = 0; c < 5; ++c) {
        const double y = std::log(100) + 0.1 * c + (c == 2 ? off : 0) + 0.14 * normal(dice);
        animal.cycles.push_back({.low = y - 0.005, .high = y + 0.005});
      }
      species.animals.push_back(animal);
    }
    const LevelModel fit = fit_levels(std::vector{species}, documented_priors().cycle);
    const auto& at = fit.parameters.at_instar;
    CHECK(at[5] - (at[4] + at[6]) / 2 == Approx(off).margin(off == 0 ? 0.04 : 0.1));
    CHECK(std::sqrt(fit.parameters.at_instar_variance[12]) > (off == 0 ? 0 : 0.12));
    CHECK(std::sqrt(fit.parameters.at_instar_variance[12]) < (off == 0 ? 0.06 : 1));
  }
}

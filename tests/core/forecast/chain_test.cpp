// The pass over hidden phases against published values and against every path written out.

#include "core/forecast/chain.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>

#include "core/forecast/maximise.hpp"
#include "tests/frame.hpp"

using namespace rackside;

namespace {

// Three kinds of weather, each seen as it is. Rabiner 1989, Proc. IEEE 77:257-286, section II
// (numbers from memory, reproduced): rain or snow, cloudy, sunny.
using Weather = Chain<3>;
constexpr std::array<Weather::Phases, 3> weather_moves{
    {{0.4, 0.3, 0.3}, {0.2, 0.6, 0.2}, {0.1, 0.1, 0.8}}};

double chance_of_weather(const std::vector<std::size_t>& days) {
  std::vector<Weather::Step> steps;
  for (const std::size_t day : days) {
    Weather::Step step{.moves = weather_moves};
    step.seen[day] = 1;
    steps.push_back(step);
  }
  Weather::Phases start{};
  start[days[0]] = 1;  // the first day is given
  steps[0].moves = {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
  return std::exp(Weather::run(start, steps, {1, 1, 1}).log_likelihood);
}

// Two phases that last one to three steps by their own laws, as a chain over phase and age.
struct SemiMarkov {
  using Aged = Chain<6>;  // phase * 3 + age - 1
  static constexpr std::array<std::array<double, 3>, 2> sojourn{{{0.2, 0.5, 0.3}, {0.6, 0.3, 0.1}}};
  static constexpr std::array<std::array<double, 3>, 2> emits{{{0.8, 0.15, 0.05}, {0.1, 0.3, 0.6}}};
  static constexpr std::array<std::size_t, 8> seen{1, 1, 3, 3, 2, 1, 1, 3};

  static double hazard(std::size_t phase, std::size_t age) {
    double left = 0;
    for (std::size_t a = age; a < 3; ++a) left += sojourn[phase][a];
    return sojourn[phase][age] / left;
  }
  // `only`: where it may have been, else anywhere.
  static double likelihood(const std::vector<std::size_t>& only, bool ends_exactly) {
    std::vector<Aged::Step> steps(seen.size());
    Aged::Phases end{};
    for (std::size_t s = 0; s < 6; ++s) {
      const std::size_t phase = s / 3;
      const double leaves = hazard(phase, s % 3);
      end[s] = ends_exactly ? leaves : 1;
      for (std::size_t k = 0; k < steps.size(); ++k) {
        const bool may = only.empty() || only[k] == phase;
        steps[k].seen[s] = may ? emits[phase][seen[k] - 1] : 0;
        if (k == 0) {
          steps[k].moves[s][s] = 1;
        } else {
          steps[k].moves[s][3 * (1 - phase)] = leaves;
          if (s % 3 < 2) steps[k].moves[s][s + 1] = 1 - leaves;
        }
      }
    }
    return std::exp(Aged::run({0.7, 0, 0, 0.3, 0, 0}, steps, end).log_likelihood);
  }
};

std::vector<double> earthquakes(const std::filesystem::path& file) {
  std::ifstream in(file);
  std::vector<double> counts;
  std::string line;
  std::getline(in, line);  // the header
  while (std::getline(in, line)) counts.push_back(std::stod(line.substr(line.find(',') + 1)));
  return counts;
}

template <std::size_t N>
struct Shaking {
  std::array<double, N> rates{};
  std::array<typename Chain<N>::Phases, N> moves{};

  // Logs of the rates, then of each row's chances to move away against staying.
  explicit Shaking(const std::vector<double>& at) {
    std::size_t next = N;
    for (std::size_t i = 0; i < N; ++i) {
      rates[i] = std::exp(at[i]);
      double sum = 1;
      for (std::size_t j = 0; j < N; ++j) {
        moves[i][j] = i == j ? 1 : std::exp(at[next++]);
        if (i != j) sum += moves[i][j];
      }
      for (double& chance : moves[i]) chance /= sum;
    }
  }
  // What the moves settle to: squared so often that nothing changes any more.
  [[nodiscard]] typename Chain<N>::Phases settled() const {
    auto power = moves;
    for (int times = 0; times < 30; ++times) {
      auto square = power;
      for (std::size_t i = 0; i < N; ++i)
        for (std::size_t j = 0; j < N; ++j) {
          square[i][j] = 0;
          for (std::size_t k = 0; k < N; ++k) square[i][j] += power[i][k] * power[k][j];
        }
      power = square;
    }
    return power[0];
  }
  [[nodiscard]] double log_likelihood(const std::vector<double>& counts) const {
    std::vector<typename Chain<N>::Step> steps;
    for (const double count : counts) {
      typename Chain<N>::Step step{.moves = moves};
      for (std::size_t i = 0; i < N; ++i)
        step.seen[i] = std::exp(count * std::log(rates[i]) - rates[i] - std::lgamma(count + 1));
      steps.push_back(step);
    }
    typename Chain<N>::Phases anything;
    anything.fill(1);
    return Chain<N>::run(settled(), steps, anything).log_likelihood;
  }
};

struct Shaken {
  std::vector<double> rates;
  double log_likelihood = 0;
};
template <std::size_t N>
Shaken most_likely(const std::vector<double>& counts, const std::vector<double>& from) {
  const Objective objective = [&](const std::vector<double>& at) {
    return Shaking<N>(at).log_likelihood(counts);
  };
  const auto at = maximise(objective, from, {.most_steps = 400, .tolerance = 1e-11});
  const Shaking<N> best(at);
  return {{best.rates.begin(), best.rates.end()}, best.log_likelihood(counts)};
}

}  // namespace

TEST_CASE("three kinds of weather come in a row as often as published") {
  CHECK(chance_of_weather({2, 2, 2, 0, 0, 2, 1, 2}) == Approx(1.536e-4).epsilon(0).margin(1e-9));
}

TEST_CASE("a kind of weather lasts as long as published") {
  const std::array published{1.667, 2.5, 5.0};  // Rabiner 1989
  for (std::size_t kind = 0; kind < 3; ++kind) {
    double mean = 0, before = 1;  // P(at least n days), summed
    for (std::size_t n = 1; n < 200; ++n) {
      mean += before;
      before = chance_of_weather(std::vector<std::size_t>(n + 1, kind));
    }
    CHECK(mean == Approx(published[kind]).margin(5e-4));
  }
}

TEST_CASE("phases with lengths of their own have the likelihoods of all paths written out") {
  // Initial (.7, .3), lengths and emissions as above, y = 1 1 3 3 2 1 1 3. Computed by enumeration
  // elsewhere.
  CHECK(std::abs(SemiMarkov::likelihood({}, false) - 0.00115173778346) < 1e-12);
  CHECK(std::abs(SemiMarkov::likelihood({}, true) - 0.000708269239005) < 1e-12);
}

TEST_CASE("of all paths the most likely one is the one enumeration finds") {
  double best = 0, sum = 0;
  std::vector<std::size_t> best_path;
  for (unsigned code = 0; code < 256; ++code) {
    std::vector<std::size_t> path;
    for (unsigned k = 0; k < 8; ++k) path.push_back(code >> k & 1U);
    const double likelihood = SemiMarkov::likelihood(path, false);
    if (!(likelihood >= 0)) continue;  // no path of these lengths: nothing to normalise
    sum += likelihood;
    if (likelihood > best) {
      best = likelihood;
      best_path = path;
    }
  }
  CHECK(best_path == std::vector<std::size_t>{0, 0, 1, 1, 1, 0, 0, 1});  // 11222112
  CHECK(std::abs(best - 4.644864e-4) < 1e-12);
  CHECK(std::abs(sum - 0.00115173778346) < 1e-12);
}

TEST_CASE("the phase at each step is as often as in all paths written out") {
  using Two = Chain<2>;
  rc::prop("forward and backward meet", [] {
    const auto chance = [] { return *rc::gen::inRange(1, 1000) / 1000.0; };
    std::vector<Two::Step> steps(4);
    for (Two::Step& step : steps) {
      const double a = chance(), b = chance();
      step = {{{{1 - a, a}, {b, 1 - b}}}, {chance(), chance()}};
    }
    const double first = chance();
    const Two::Phases start{first, 1 - first}, end{chance(), chance()};
    std::array<Two::Phases, 4> told{};
    double total = 0;
    for (unsigned path = 0; path < 32; ++path) {  // the phase before, and at each of the four steps
      std::size_t at = path & 1U;
      double weight = start[at];
      for (unsigned k = 0; k < 4; ++k) {
        const std::size_t next = path >> (k + 1) & 1U;
        weight *= steps[k].moves[at][next] * steps[k].seen[next];
        at = next;
      }
      weight *= end[at];
      total += weight;
      for (unsigned k = 0; k < 4; ++k) told[k][path >> (k + 1) & 1U] += weight;
    }
    const Two::Pass pass = Two::run(start, steps, end);
    RC_ASSERT(std::abs(pass.log_likelihood - std::log(total)) < 1e-12);
    for (std::size_t k = 0; k < 4; ++k) {
      Two::Phases now = Two::times(pass.predicted[k], pass.ahead[k]);
      Two::normalise(now);
      RC_ASSERT(std::abs(now[0] - told[k][0] / total) < 1e-12);
    }
  });
}

TEST_CASE("years of few and of many earthquakes have the published likelihoods") {
  // Poisson counts in 1, 2 and 3 hidden states, each at its most likely numbers: Zucchini &
  // MacDonald 2009, Hidden Markov Models for Time Series; minus log likelihoods computed.
  const auto file = tests::outside_data("earthquakes_m7.csv");
  if (!file) {
    WARN("skipped: not here");
    return;
  }
  const std::vector<double> counts = earthquakes(*file);
  REQUIRE(counts.size() == 107);
  CHECK(-most_likely<1>(counts, {3}).log_likelihood == Approx(391.918928).epsilon(0).margin(1e-4));
  const Shaken two = most_likely<2>(counts, {2.7, 3.3, -2, -2});
  CHECK(-two.log_likelihood == Approx(342.318267).epsilon(0).margin(1e-4));
  CHECK(two.rates[0] == Approx(15.47228).epsilon(0).margin(1e-3));
  CHECK(two.rates[1] == Approx(26.12544).epsilon(0).margin(1e-3));
  // From many straight to few never happens at the top: begun from next to nothing.
  const Shaken three = most_likely<3>(counts, {2.6, 3, 3.4, -3, -4, -2, -2, -14, -1});
  CHECK(-three.log_likelihood == Approx(329.460276).epsilon(0).margin(1e-4));
}

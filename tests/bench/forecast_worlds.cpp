// How good forecasts are in invented worlds, beside an oracle that knows each of them and every
// animal's nature, and one that knows the animals by their past: the figures of
// core/forecast/MODEL.md. Called with a number of animals, then with one seed or several, and with
// names of worlds where not all are wanted.

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <span>
#include <string>
#include <vector>

#include "tests/core/forecast/judge.hpp"

namespace {

using namespace rackside::tests;

struct Sums {
  double crps = 0, oracle_crps = 0, past_crps = 0;
  double brier = 0, oracle_brier = 0, past_brier = 0;
  double held = 0, oracle_held = 0, past_held = 0;
  int trials = 0;

  void add(const Verdict& v) {
    crps += v.crps;
    oracle_crps += v.oracle_crps;
    brier += v.brier;
    oracle_brier += v.oracle_brier;
    held += v.in_nine_tenths;
    oracle_held += v.oracle_in_nine_tenths;
    past_crps += v.past_crps;
    past_brier += v.past_brier;
    past_held += v.past_in_nine_tenths;
    ++trials;
  }
  void print(const char* name) const {
    std::printf("%-32s %6.3f %6.3f %7.2f %6.2f %7.1f %6.1f %6.1f\n", name, crps / oracle_crps,
                crps / past_crps, brier / oracle_brier, brier / past_brier, 100 * held / trials,
                100 * oracle_held / trials, 100 * past_held / trials);
    std::fflush(stdout);
  }
};

}  // namespace

int main(int count, char** arguments) {
  if (count < 3) return EXIT_FAILURE;
  const int animals = std::atoi(arguments[1]);
  std::vector<std::uint64_t> seeds;
  std::vector<std::string> names;
  for (const std::string word : std::span(arguments, static_cast<std::size_t>(count)).subspan(2)) {
    const bool number = std::ranges::all_of(word, [](char c) { return c >= '0' && c <= '9'; });
    if (number)
      seeds.push_back(std::stoull(word));
    else
      names.push_back(word);
  }
  std::printf(
      "%d animals: CRPS and Brier, each against the oracle that knows natures and against the "
      "one that knows the past; 90 %% ranges, those of the two oracles\n",
      animals);
  Sums all;
  double log_crps = 0, log_past_crps = 0, worlds_tried = 0;
  for (const World& world : worlds()) {
    if (!names.empty() && std::ranges::find(names, world.name) == names.end()) continue;
    Sums sums;
    for (const std::uint64_t seed : seeds) {
      const Verdict verdict =
          judge(world, {.animals = animals, .dates = 2, .seed = seed, .paths = 700});
      sums.add(verdict);
      all.add(verdict);
    }
    ++worlds_tried;
    log_crps += std::log(sums.crps / sums.oracle_crps);
    log_past_crps += std::log(sums.crps / sums.past_crps);
    sums.print(world.name.c_str());
  }
  all.print("all days together");
  std::printf("mean of the worlds' CRPS ratios %.3f and %.3f\n", std::exp(log_crps / worlds_tried),
              std::exp(log_past_crps / worlds_tried));
}

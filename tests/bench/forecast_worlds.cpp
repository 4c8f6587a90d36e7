// How good forecasts are in invented worlds, beside an oracle that knows each of them: the figures
// of core/forecast/MODEL.md. Called with a number of animals, then with one seed or several.

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <map>

#include "tests/core/forecast/judge.hpp"

namespace {

using namespace rackside::tests;

struct Sums {
  double crps = 0, oracle_crps = 0, brier = 0, oracle_brier = 0, held = 0, oracle_held = 0;
  int trials = 0;

  void add(const Verdict& v) {
    crps += v.crps;
    oracle_crps += v.oracle_crps;
    brier += v.brier;
    oracle_brier += v.oracle_brier;
    held += v.in_nine_tenths;
    oracle_held += v.oracle_in_nine_tenths;
    ++trials;
  }
  void print(const char* name) const {
    std::printf("%-32s %6.3f %6.2f %6.1f %6.1f\n", name, crps / oracle_crps, brier / oracle_brier,
                100 * held / trials, 100 * oracle_held / trials);
    std::fflush(stdout);
  }
};

}  // namespace

int main(int count, char** arguments) {
  if (count < 3) return EXIT_FAILURE;
  const int animals = std::atoi(arguments[1]);
  std::printf("%d animals, CRPS and Brier against the oracle's, 90 %% ranges, the oracle's\n",
              animals);
  Sums all;
  double log_crps = 0;
  for (const World& world : worlds()) {
    Sums sums;
    for (int i = 2; i < count; ++i) {
      const Verdict verdict = judge(world, {.animals = animals,
                                            .dates = 2,
                                            .seed = std::strtoull(arguments[i], nullptr, 10),
                                            .paths = 700});
      sums.add(verdict);
      all.add(verdict);
    }
    log_crps += std::log(sums.crps / sums.oracle_crps);
    sums.print(world.name.c_str());
  }
  all.print("all days together");
  std::printf("mean of the worlds' CRPS ratios %.3f\n",
              std::exp(log_crps / static_cast<double>(worlds().size())));
}

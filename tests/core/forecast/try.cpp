#include "tests/core/forecast/judge.hpp"
#include <cstdio>
#include <cstdlib>
#include <string>
using namespace rackside::tests;
int main(int argc, char** argv) {
  Trial trial; trial.animals = argc > 2 ? atoi(argv[2]) : 60; trial.seed = argc > 3 ? atoi(argv[3]) : 1;
  if (argc > 4) trial.paths = atoi(argv[4]);
  std::printf("%-34s %5s %5s | %6s %6s %5s %5s | %5s %5s %5s %5s | %6s %6s %5s | unseen\n","world","n","out","crps","oracle","ratio","rule","50","90","o50","o90","brier","oracle","ratio");
  for (const World& w : worlds()) {
    if (argc > 1 && std::string(argv[1]) != "all" && w.name.find(argv[1]) == std::string::npos) continue;
    const Verdict v = judge(w, trial);
    std::printf("%-34s %5d %5d | %6.2f %6.2f %5.2f %5.2f | %5.2f %5.2f %5.2f %5.2f | %6.4f %6.4f %5.2f | %.3f %.3f\n", w.name.c_str(), v.forecasts, v.left_out, v.crps, v.oracle_crps, v.crps/v.oracle_crps, v.rule_crps/v.oracle_crps, v.in_half, v.in_nine_tenths, v.oracle_in_half, v.oracle_in_nine_tenths, v.brier, v.oracle_brier, v.brier/v.oracle_brier, v.mean_unseen, v.truly_unseen);
    std::fflush(stdout);
  }
}

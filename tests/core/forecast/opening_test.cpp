// The passes over a cycle against every path written out.

#include "core/forecast/opening.hpp"

#include <cmath>

#include "tests/frame.hpp"

using namespace rackside;

namespace {

// Likelihood of all steps by summing over every sequence of hardening, feeding and fasting.
double by_enumeration(const std::vector<Step>& steps, double moult, double log_length,
                      const Habits& habits) {
  double total = 0;
  const auto paths = static_cast<int>(std::pow(3, steps.size()));
  for (int path = 0; path < paths; ++path) {
    double weight = 1;
    int before = 0;  // 0 hardening, 1 feeding, 2 fasting
    int code = path;
    double day = moult;
    for (const Step& step : steps) {
      const int now = code % 3;
      code /= 3;
      const double stays = still_hard(habits.hardening, log_length, step.day - moult) /
                           still_hard(habits.hardening, log_length, day - moult);
      const Change change = change_in(habits, step.day - day);
      const double soft = before == 0 ? 1 - stays : 1;
      if (before == 0 && now == 0) weight *= stays;
      if (before == 0 && now == 1) weight *= soft * (1 - change.to_fast);
      if (before == 0 && now == 2) weight *= soft * change.to_fast;
      if (before == 1) weight *= now == 1 ? 1 - change.to_fast : now == 2 ? change.to_fast : 0;
      if (before == 2) weight *= now == 2 ? 1 - change.to_feed : now == 1 ? change.to_feed : 0;
      const bool fresh = step.day - moult < fresh_days;
      weight *= now == 0   ? step.hardening
                : now == 1 ? (fresh ? step.feeding_fresh : step.feeding)
                           : (fresh ? step.fasting_fresh : step.fasting);
      before = now;
      day = step.day;
    }
    total += weight;
  }
  return std::log(total);
}

}  // namespace

TEST_CASE("the forward pass gives the likelihood of all paths written out") {
  const Habits habits = prior_habits(documented_priors(), {}, Stage::Juvenile);
  std::vector<Observation> seen;
  const auto offer = [&](double day, Outcome outcome) {
    seen.push_back({.day = day, .outcome = outcome});
  };
  offer(4, Outcome::Refused);
  offer(9, Outcome::Took);
  seen.push_back({.day = 12, .kind = Observation::Kind::Look, .signs = {Sign::BrighterColours}});
  offer(30, Outcome::Refused);
  offer(41, Outcome::Refused);
  offer(60, Outcome::Took);
  const auto steps = steps_of(seen, habits, {});
  Opening opening;
  opening.run(steps, {0, false, std::log(120)}, 65, habits);
  CHECK(opening.log_likelihood().back() ==
        Approx(by_enumeration(steps, 0, std::log(120), habits)).epsilon(0).margin(1e-12));
}

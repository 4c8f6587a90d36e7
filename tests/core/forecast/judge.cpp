#include "tests/core/forecast/judge.hpp"

#include <cmath>

#include "core/backtest/scores.hpp"
#include "core/forecast/collection_model.hpp"
#include "tests/core/forecast/oracle.hpp"

namespace rackside::tests {
namespace {

// "The last interval again", give or take a quarter.
double rule_of_thumb(const Evidence& evidence, double as_of, double truth) {
  double interval = 150;
  double last = evidence.arrived;
  if (!evidence.moults.empty()) last = evidence.moults.back().middle();
  if (evidence.moults.size() > 1)
    interval = last - evidence.moults[evidence.moults.size() - 2].middle();
  return crps_of_normal(last + interval - as_of, interval / 4, truth);
}

bool inside(double low, double high, double truth) { return truth >= low && truth <= high; }

bool unsure(const Oracle& oracle) {
  return oracle.effective < 40 || oracle.quantiles.size() != moult_quantiles;
}

struct Scored {
  const InventedCollection& collection;
  int paths;
  Dice dice;
  Verdict sum;

  void score(const CollectionModel& model, const InventedAnimal& animal, const Evidence& evidence,
             double as_of) {
    const auto ask = [&](Knows knows) {
      return consult(collection.world, animal, evidence, as_of, paths, dice, knows);
    };
    const Oracle oracle = ask(Knows::Nature);
    const Oracle by_past = ask(Knows::Past);
    if (unsure(oracle) || unsure(by_past)) {
      ++sum.left_out;
      return;
    }
    const Forecast told = forecast(model, evidence, moment_of(as_of));
    const double truth = animal.moult_since_record(as_of) - as_of;
    const auto best = std::span<const double, moult_quantiles>(oracle.quantiles);
    const auto second = std::span<const double, moult_quantiles>(by_past.quantiles);
    const double premoult = animal.cycle_on(as_of).in_premoult(as_of) ? 1 : 0;
    ++sum.forecasts;
    sum.crps += crps_by_quantiles(told.next_moult, truth);
    sum.oracle_crps += crps_by_quantiles(best, truth);
    sum.rule_crps += rule_of_thumb(evidence, as_of, truth);
    sum.brier += std::pow(told.p_premoult - premoult, 2);
    sum.oracle_brier += std::pow(oracle.p_premoult - premoult, 2);
    sum.past_crps += crps_by_quantiles(second, truth);
    sum.past_brier += std::pow(by_past.p_premoult - premoult, 2);
    sum.past_in_nine_tenths += inside(second[0], second[18], truth);
    sum.in_half += inside(told.next_moult[4], told.next_moult[14], truth);
    sum.in_nine_tenths += inside(told.next_moult[0], told.next_moult[18], truth);
    sum.oracle_in_half += inside(best[4], best[14], truth);
    sum.oracle_in_nine_tenths += inside(best[0], best[18], truth);
    sum.mean_unseen += told.p_moulted_unseen;
    sum.truly_unseen += truth < 0;
  }
};

}  // namespace

Verdict judge(const World& world, const Trial& trial) {
  const InventedCollection collection = invent(world, trial.animals, trial.days, trial.seed);
  Scored scored{collection, trial.paths, Dice(trial.seed + 77), {}};
  for (int date = 0; date < trial.dates; ++date) {
    const double as_of =
        collection.begins + trial.days * (0.55 + 0.42 * date / std::max(1, trial.dates - 1)) + 0.5;
    const Surroundings around = gather_surroundings(collection.room, moment_of(as_of).utc);
    std::vector<Evidence> evidence;
    std::vector<const InventedAnimal*> whose;
    for (const InventedAnimal& animal : collection.animals)
      if (auto gathered = gather_evidence(animal.events, moment_of(as_of).utc, around)) {
        evidence.push_back(std::move(*gathered));
        whose.push_back(&animal);
      }
    const CollectionModel model = learn(evidence, as_of);
    for (std::size_t i = 0; i < evidence.size(); ++i)
      scored.score(model, *whose[i], evidence[i], as_of);
  }
  Verdict verdict = scored.sum;
  for (double Verdict::*part :
       {&Verdict::crps, &Verdict::oracle_crps, &Verdict::rule_crps, &Verdict::brier,
        &Verdict::oracle_brier, &Verdict::in_half, &Verdict::in_nine_tenths,
        &Verdict::oracle_in_half, &Verdict::oracle_in_nine_tenths, &Verdict::past_crps,
        &Verdict::past_brier, &Verdict::past_in_nine_tenths, &Verdict::mean_unseen,
        &Verdict::truly_unseen})
    verdict.*part /= std::max(1, verdict.forecasts);
  return verdict;
}

std::vector<World> worlds() {
  return {
      {.name = "plain"},
      {.name = "gamma, share of the cycle",
       .shape = World::Shape::Gamma,
       .within = 0.18,
       .law = World::PremoultLaw::ShareOfCycle,
       .premoult_share = 0.2},
      {.name = "weibull, short premoult",
       .shape = World::Shape::Weibull,
       .within = 0.2,
       .premoult_share = 0.09,
       .premoult_power = 0.3},
      {.name = "tight intervals", .within = 0.08, .between = 0.08, .outliers = 0},
      {.name = "wild intervals", .within = 0.28, .between = 0.2, .outliers = 0.08},
      {.name = "adults in season", .season_of_adults = 0.8},
      {.name = "seasons of growth, thermometer", .season_of_growth = 0.35, .readings = true},
      {.name = "seasons of growth, none read", .season_of_growth = 0.35},
      {.name = "careless keeper", .look_every = 21, .signs_reported = 0.05, .missed = 0.15},
      {.name = "rare offers",
       .offer_every = 14,
       .offer_every_adult = 28,
       .look_every = 20,
       .pauses = 0.3},
      {.name = "long fasts",
       .fasts_a_year = 1,
       .fast_days = 50,
       .fasts_a_year_adult = 1.5,
       .fast_days_adult = 100},
      {.name = "greedy until late",
       .refuses_feeding = 0.2,
       .refuses_premoult = 0.6,
       .refuses_hardening = 0.7},
      {.name = "signs that stay", .signs_reported = 0.2, .signs_stay = true},
      {.name = "many sheds missed", .missed = 0.25},
      {.name = "long premoult",
       .law = World::PremoultLaw::Gamma,
       .premoult_share = 0.35,
       .premoult_spread = 0.5},
      {.name = "growing to a year", .lengthening = 0.2, .ceiling = 365},
      {.name = "pace by food", .feeding_plans = 0.5, .food = 1},
      {.name = "fed unevenly to no effect", .feeding_plans = 0.5},
  };
}

}  // namespace rackside::tests

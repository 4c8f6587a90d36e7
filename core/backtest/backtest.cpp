#include "core/backtest/backtest.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

#include "core/backtest/danger.hpp"
#include "core/backtest/hindsight.hpp"
#include "core/forecast/collection_model.hpp"

namespace rackside {
namespace {

constexpr int days_between_refits = 28;

class Replay {
 public:
  explicit Replay(const std::vector<Evidence>& known_now) {
    for (const Evidence& animal : known_now) known_now_[animal.animal] = &animal;
    report_.moments.push_back({.name = "this forecast"});
    for (const Rule rule : all_rules)
      report_.moments.push_back({.name = std::string(rule_name(rule))});
  }

  void add_day(Day day, const std::vector<Evidence>& animals) {
    const Moment noon = on_day(day, std::chrono::minutes{0}).moment;
    const double now = wall_day(noon);
    if (!refitted_ || day - *refitted_ >= std::chrono::days{days_between_refits}) {
      model_ = learn(animals, now, refitted_ ? &model_ : nullptr);
      refitted_ = day;
    }
    const IntervalMeans means(animals);
    ++report_.days;
    for (const Evidence& animal : animals) {
      const auto known = known_now_.find(animal.animal);
      if (animal.ended || animal.matured || animal.count > 1 || known == known_now_.end()) continue;
      const Forecast told = forecast(model_, animal, noon, Reasons::LeftOut);
      score_moment(told, animal, *known->second, means, now);
      score_call(told, *known->second, now);
      if (next_on_record(*known->second, now))
        meals_.push_back(
            {chance_of_danger(told), refused_twice(animal), was_dangerous(*known->second, now)});
    }
  }

  BacktestReport finish() {
    const auto n = static_cast<double>(std::max<std::size_t>(1, report_.forecasts));
    for (MomentScore& score : report_.moments) {
      score.crps /= n;
      score.in_half /= n;
      score.in_nine_tenths /= n;
    }
    for (double& place : report_.places) place /= n;
    report_.moults = moults_.size();
    score_calls();
    report_.danger = score_meals(std::move(meals_));
    add_cautions();
    return std::move(report_);
  }

 private:
  void score_moment(const Forecast& told, const Evidence& animal, const Evidence& known,
                    const IntervalMeans& means, double now) {
    const auto moult = next_on_record(known, now);
    if (!moult) {
      ++report_.without_outcome;
      return;
    }
    const double happened = moult->middle() - now;
    ++report_.forecasts;
    moults_.insert(moult->event);
    add(report_.moments[0], told.next_moult, happened);
    for (std::size_t i = 0; i < all_rules.size(); ++i)
      add(report_.moments[i + 1], by_rule(all_rules[i], animal, means, now), happened);
    const double place = place_in(told.next_moult, happened);
    report_.places[std::min<std::size_t>(9, static_cast<std::size_t>(place * 10))] += 1;
  }
  static void add(MomentScore& score, const std::array<double, moult_quantiles>& q,
                  double happened) {
    score.crps += crps_by_quantiles(q, happened);
    score.in_half += happened >= q[4] && happened <= q[14] ? 1 : 0;
    score.in_nine_tenths += happened >= q[0] && happened <= q[18] ? 1 : 0;
  }
  void score_call(const Forecast& told, const Evidence& known, double now) {
    if (const auto truly = was_in_premoult(known, now)) calls_.push_back({told.p_premoult, *truly});
  }
  void score_calls() {
    report_.calls = calls_.size();
    report_.brier = brier_score(calls_);
    report_.reliability = reliability(calls_);
    const auto happened =
        static_cast<double>(std::ranges::count_if(calls_, [](auto& c) { return c.happened; }));
    const double share = calls_.empty() ? 0 : happened / static_cast<double>(calls_.size());
    report_.brier_of_share = share * (1 - share);
  }
  void add_cautions() {
    constexpr std::size_t few_moults = 20;
    if (report_.moults < few_moults)
      report_.cautions.push_back(
          fmt::format("Too little to judge by: {} moults were found after these days. Below {} the "
                      "figures say more about chance than about the forecast.",
                      report_.moults, few_moults));
    if (report_.without_outcome > report_.forecasts)
      report_.cautions.push_back(
          "More forecasts are still open than have been decided. What is scored here are the "
          "shorter waits; choose earlier days for a fair picture.");
  }

  std::map<AnimalId, const Evidence*> known_now_;
  CollectionModel model_;
  std::optional<Day> refitted_;
  BacktestReport report_;
  std::set<EventId> moults_;
  std::vector<Call> calls_;
  std::vector<Meal> meals_;
};

}  // namespace

BacktestPlan plan_backtest(Day from, Day to) {
  constexpr int most_days = 60;
  const auto span = (to - from).count();
  return {from, to, std::max(7, static_cast<int>((span + most_days - 1) / most_days))};
}

Result<BacktestReport> backtest(const BacktestPlan& plan, const EvidenceAt& evidence_at,
                                const std::vector<Evidence>& known_now) {
  Replay replay(known_now);
  for (Day day = plan.from; day <= plan.to; day += std::chrono::days{plan.every_days}) {
    const auto animals = evidence_at(day);
    if (!animals) return tl::unexpected(animals.error());
    replay.add_day(day, *animals);
  }
  return replay.finish();
}

}  // namespace rackside

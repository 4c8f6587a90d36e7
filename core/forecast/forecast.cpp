#include "core/forecast/forecast.hpp"

#include <algorithm>
#include <cmath>

#include "core/forecast/collection_model.hpp"
#include "core/forecast/running.hpp"
#include "core/forecast/why.hpp"

namespace rackside {
namespace {

// Seen moulting today, or lying on its back and not seen since.
bool is_moulting(const Evidence& evidence, double now) {
  if (!evidence.moults.empty() && evidence.moults.back().width() <= 1 &&
      now - evidence.moults.back().latest < 0.5)
    return true;
  for (auto it = evidence.observations.rbegin(); it != evidence.observations.rend(); ++it) {
    if (it->kind != Observation::Kind::Look) continue;
    const bool moulted_since =
        !evidence.moults.empty() && evidence.moults.back().latest > it->day - 0.5;
    return it->signs.has(Sign::OnItsBack) && now - it->day < 1.5 && !moulted_since;
  }
  return false;
}

Phase phase_of(const Belief& belief, const Evidence& evidence, double now) {
  if (is_moulting(evidence, now)) return Phase::Moulting;
  const double feeding = 1 - belief.p_premoult - belief.p_hardening;
  if (belief.p_premoult >= feeding && belief.p_premoult >= belief.p_hardening)
    return Phase::Premoult;
  return belief.p_hardening > feeding ? Phase::Hardening : Phase::Feeding;
}

std::array<double, moult_quantiles> quantiles_of(const Belief& belief, double now) {
  std::array<double, moult_quantiles> quantiles{};
  for (std::size_t i = 0; i < moult_quantiles; ++i)
    quantiles[i] = quantile(belief, static_cast<double>(i + 1) / (moult_quantiles + 1)) - now;
  return quantiles;
}

// Everything that is asked of one animal follows from its belief.
struct Believed {
  double now = 0;
  Character character;
  Belief belief;

  Believed(const CollectionModel& model, const Evidence& evidence, const Moment& as_of)
      : now(wall_day(as_of)),
        character(model.character_of(evidence)),
        belief(believe(character, running_cycle(evidence, character, now), now)) {}
};

Forecast tell(const Believed& believed, const Evidence& evidence, const Moment& as_of,
              Reasons told) {
  const auto& [now, character, belief] = believed;
  Forecast result{.animal = evidence.animal, .as_of = as_of.utc};
  result.phase = phase_of(belief, evidence, now);
  result.p_premoult = belief.p_premoult;
  result.p_hardening = belief.p_hardening;
  result.p_moulted_unseen = belief.p_moulted_unseen;
  result.next_moult = quantiles_of(belief, now);
  result.ignored = evidence.ignored;
  if (told == Reasons::Told) result.why = reasons(evidence, character, belief, now);
  if (evidence.matured || evidence.ended) {
    // A mature male's body has no next moult to get ready for.
    result.phase = Phase::Finished;
    result.moult_expected = false;
    result.p_premoult = result.p_moulted_unseen = 0;
    result.why.clear();
    if (!evidence.ended)
      result.why.push_back({"a mature male: it usually never moults again", 0, {}});
  }
  if (evidence.count > 1)
    result.ignored.push_back("kept as a group: the forecast speaks of one animal of it");
  return result;
}

MoultDensity day_by_day(const Believed& believed, const Evidence& evidence) {
  const double now = believed.now;
  const Belief& belief = believed.belief;
  MoultDensity density;
  density.first_day = std::floor(quantile(belief, 0.001) - now);
  density.a_day.assign(
      static_cast<std::size_t>(std::ceil(quantile(belief, 0.999) - now - density.first_day)) + 1,
      0);
  const auto days = static_cast<double>(density.a_day.size());
  for (const MoultCell& cell : belief.cells) {
    const double per_day = cell.probability / (cell.to - cell.from);
    const double from = cell.from - now - density.first_day;
    const double to = cell.to - now - density.first_day;
    for (double day = std::max(0.0, std::floor(from)); day < std::min(to, days); day += 1)
      density.a_day[static_cast<std::size_t>(day)] +=
          per_day * (std::min(to, day + 1) - std::max(from, day));
  }
  density.median = quantile(belief, 0.5) - now;
  density.half = {quantile(belief, 0.25) - now, quantile(belief, 0.75) - now};
  density.nine_tenths = {quantile(belief, 0.05) - now, quantile(belief, 0.95) - now};
  for (const MoultSpan& moult : evidence.moults)
    density.moults.push_back(Day{std::chrono::days{std::lround(std::floor(moult.middle()))}});
  return density;
}

}  // namespace

std::string_view phase_word(Phase phase) {
  switch (phase) {
    case Phase::Hardening: return "hardening";
    case Phase::Feeding: return "feeding";
    case Phase::Premoult: return "premoult";
    case Phase::Moulting: return "moulting";
    case Phase::Finished: return "finished";
  }
  return "";
}

Forecast forecast(const CollectionModel& model, const Evidence& evidence, const Moment& as_of,
                  Reasons told) {
  return tell({model, evidence, as_of}, evidence, as_of, told);
}

MoultDensity moult_density(const CollectionModel& model, const Evidence& evidence,
                           const Moment& as_of) {
  return day_by_day({model, evidence, as_of}, evidence);
}

ForecastWithDensity forecast_with_density(const CollectionModel& model, const Evidence& evidence,
                                          const Moment& as_of) {
  const Believed believed(model, evidence, as_of);
  return {tell(believed, evidence, as_of, Reasons::Told), day_by_day(believed, evidence)};
}

}  // namespace rackside

#include "core/overview/forecaster.hpp"

namespace rackside {

void Forecaster::begin(std::vector<Event> room, const Moment& as_of) {
  as_of_ = as_of;
  surroundings_ = gather_surroundings(std::move(room), as_of.utc);
  animals_.clear();
}

void Forecaster::take(const std::vector<Event>& events) {
  if (auto evidence = gather_evidence(events, as_of_.utc, surroundings_))
    animals_.push_back(std::move(*evidence));
}

std::map<AnimalId, Forecast> Forecaster::all() {
  model_ = learn(animals_, wall_day(as_of_), &model_);
  std::map<AnimalId, Forecast> forecasts;
  for (const Evidence& evidence : animals_)
    if (!evidence.ended) forecasts.emplace(evidence.animal, forecast(model_, evidence, as_of_));
  return forecasts;
}

Outlook Forecaster::ahead(std::vector<Moment> days) const {
  Outlook outlook{.days = std::move(days), .forecasts = {}};
  for (const Evidence& evidence : animals_) {
    if (evidence.ended) continue;
    std::vector<Forecast>& list = outlook.forecasts[evidence.animal];
    for (const Moment& day : outlook.days)
      list.push_back(forecast(model_, evidence, day, Reasons::LeftOut));
  }
  return outlook;
}

std::optional<Forecast> Forecaster::plain(const std::vector<Event>& events,
                                          const Moment& as_of) const {
  const auto evidence = gather_evidence(events, as_of.utc, surroundings_);
  if (!evidence) return std::nullopt;
  return forecast(model_, *evidence, as_of, Reasons::LeftOut);
}

std::optional<Forecaster::One> Forecaster::one(const std::vector<Event>& events,
                                               const Moment& as_of) {
  const auto evidence = gather_evidence(events, as_of.utc, surroundings_);
  if (!evidence) return std::nullopt;
  return One{forecast(model_, *evidence, as_of), moult_density(model_, *evidence, as_of)};
}

}  // namespace rackside

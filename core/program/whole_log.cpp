#include "core/program/whole_log.hpp"

#include "core/forecast/collection_model.hpp"

namespace rackside::program {
namespace {

Result<std::vector<Event>> read_until(LogStore& log, Instant as_of) {
  std::vector<Event> events;
  const auto read = log.read_all([&](Event&& event) {
    if (event.when.moment.utc <= as_of) events.push_back(std::move(event));
  });
  if (!read) return tl::unexpected(read.error());
  return standing(std::move(events));
}

// The dead teach the model as well as the living; told is only of the living.
std::map<AnimalId, Forecast> forecast_all(const std::vector<Event>& events,
                                          const Collection& collection, const Moment& as_of) {
  std::map<AnimalId, std::vector<Event>> of_animal;
  std::vector<Event> of_room;
  for (const Event& event : events)
    (event.animal ? of_animal[*event.animal] : of_room).push_back(event);
  const Surroundings surroundings = gather_surroundings(std::move(of_room), as_of.utc);
  std::vector<Evidence> evidence;
  for (auto& [id, own] : of_animal)
    if (auto gathered = gather_evidence(std::move(own), as_of.utc, surroundings))
      evidence.push_back(*std::move(gathered));
  const CollectionModel model = learn(evidence, wall_day(as_of));
  std::map<AnimalId, Forecast> forecasts;
  for (const Evidence& animal : evidence)
    if (collection.animal(animal.animal)->life == Life::Living)
      forecasts.emplace(animal.animal, forecast(model, animal, as_of));
  return forecasts;
}

}  // namespace

Result<WholeLog> read_whole_log(LogStore& log, const Moment& as_of) {
  const auto events = read_until(log, as_of.utc);
  if (!events) return tl::unexpected(events.error());
  WholeLog whole;
  for (const Event& event : *events) {
    apply(whole.collection, event);
    apply(whole.rules, event);
    apply(whole.climate, event);
  }
  whole.forecasts = forecast_all(*events, whole.collection, as_of);
  return whole;
}

}  // namespace rackside::program

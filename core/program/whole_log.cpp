#include "core/program/whole_log.hpp"

#include "core/forecast/collection_evidence.hpp"
#include "core/forecast/collection_model.hpp"

namespace rackside::program {

Result<WholeLog> read_whole_log(LogStore& log, Instant until, const Moment& told_at) {
  std::vector<Event> events;
  CollectionEvidence gathering(until);
  const auto read = log.read_all([&](Event&& event) {
    if (event.when.moment.utc <= until) events.push_back(event);
    gathering.take(std::move(event));
  });
  if (!read) return tl::unexpected(read.error());
  WholeLog whole;
  for (const Event& event : standing(std::move(events))) {
    apply(whole.collection, event);
    apply(whole.rules, event);
    apply(whole.climate, event);
  }
  // The dead teach the model as well as the living; told is only of the living.
  const auto animals = gathering.finish();
  const CollectionModel model = learn(animals, wall_day(told_at));
  for (const Evidence& animal : animals)
    if (!animal.ended) whole.forecasts.emplace(animal.animal, forecast(model, animal, told_at));
  return whole;
}

}  // namespace rackside::program

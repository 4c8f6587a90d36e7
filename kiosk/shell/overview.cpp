#include "kiosk/shell/overview.hpp"

namespace rackside::kiosk {
namespace {

// Gathers events until the animal changes.
class PerAnimal {
 public:
  PerAnimal(Collection& collection, Forecaster& forecaster)
      : collection_(collection), forecaster_(forecaster) {}

  void take(Event&& event) {
    if (!event.animal) return;
    if (!events_.empty() && events_.front().animal != event.animal) finish();
    events_.push_back(std::move(event));
  }

  void finish() {
    if (events_.empty()) return;
    const auto animal = fold_animal(events_);
    if (animal) {
      replace(collection_, *animal);
      forecaster_.take(events_);
    }
    events_.clear();
  }

 private:
  Collection& collection_;
  Forecaster& forecaster_;
  std::vector<Event> events_;
};

}  // namespace

Result<Collection> read_roster(LogStore& log) {
  return log.read_kinds(roster_kinds()).map([](std::vector<Event> events) {
    return fold_collection(std::move(events));
  });
}

Result<OverviewReady> read_overview(LogStore& log, Forecaster& forecaster, const Moment& as_of) {
  OverviewReady ready;
  auto roster = read_roster(log);
  if (!roster) return tl::unexpected(roster.error());
  ready.collection = std::move(*roster);
  auto rules = log.read_kinds({kind_name(RuleSet{}), kind_name(Retracted{})});
  if (!rules) return tl::unexpected(rules.error());
  ready.rules = fold_rules(std::move(*rules));
  auto room = log.read_kinds({kind_name(TemperatureRead{}), kind_name(HumidityRead{}),
                              kind_name(EnclosureAdded{}), kind_name(EnclosureMoved{}),
                              kind_name(Retracted{})});
  if (!room) return tl::unexpected(room.error());
  ready.climate = fold_climate(*room);

  forecaster.begin(std::move(*room), as_of);
  PerAnimal animals(ready.collection, forecaster);
  const auto read = log.read_all([&](Event&& event) { animals.take(std::move(event)); });
  if (!read) return tl::unexpected(read.error());
  animals.finish();
  ready.forecasts = forecaster.all();
  return ready;
}

}  // namespace rackside::kiosk

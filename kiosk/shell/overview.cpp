#include "kiosk/shell/overview.hpp"

#include <utility>

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

Result<std::optional<RoundSoFar>> read_round(LogStore& log, const OverviewReady& overview) {
  auto rounds = log.read_kinds({kind_name(RoundStarted{}), kind_name(RoundEnded{}),
                                kind_name(Retracted{})});
  if (!rounds) return tl::unexpected(rounds.error());
  const auto round = last_round(std::move(*rounds), log.kiosk());
  if (!round || round->ended) return std::nullopt;

  // The collection as the round found it: every animal without what was written since.
  RoundSoFar so_far{.round = *round};
  Collection before = overview.collection;
  Forecaster forecaster;
  forecaster.begin({}, round->started.moment);
  std::vector<Event> animal;
  const auto finish = [&] {
    RoundLog parts = split_at(*round, std::exchange(animal, {}));
    so_far.since.insert(so_far.since.end(), parts.since.begin(), parts.since.end());
    if (const auto state = fold_animal(parts.before)) {
      replace(before, *state);
      forecaster.take(parts.before);
    }
  };
  const auto read = log.read_all([&](Event&& event) {
    if (!event.animal) return;
    if (!animal.empty() && animal.front().animal != event.animal) finish();
    animal.push_back(std::move(event));
  });
  if (!read) return tl::unexpected(read.error());
  finish();
  so_far.plan = plan_day(before, forecaster.all(), overview.rules, overview.climate,
                         round->started.moment, round->rack);
  return so_far;
}

}  // namespace rackside::kiosk

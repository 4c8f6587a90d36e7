#include "core/overview/overview.hpp"

#include <utility>

namespace rackside {
namespace {

// Takes events in the order of LogStore::read_all: those without an animal first, then animal by
// animal.
class Reader {
 public:
  Reader(Overview& overview, Forecaster& forecaster, const Moment& as_of, KioskId kiosk)
      : overview_(overview), forecaster_(forecaster), as_of_(as_of), kiosk_(kiosk) {}

  void take(Event&& event) {
    if (!event.animal) {
      room_.push_back(std::move(event));
      return;
    }
    if (!room_told_) tell_room();
    if (!animal_.empty() && animal_.front().animal != event.animal) tell_animal();
    animal_.push_back(std::move(event));
  }

  void finish() {
    if (!room_told_) tell_room();
    tell_animal();
  }

 private:
  void tell_room() {
    room_told_ = true;
    room_ = standing(std::move(room_));
    for (const Event& event : room_) {
      apply(overview_.collection, event);
      apply(overview_.rules, event);
      apply(overview_.climate, event);
      apply(overview_.air, event);
      apply(overview_.warmth, event);
      apply(overview_.cover, event);
    }
    keep_since(overview_.air, as_of_.utc - air_days_shown);
    overview_.last_round = last_round(room_, kiosk_);
    forecaster_.begin(std::exchange(room_, {}), as_of_);
  }

  void tell_animal() {
    if (animal_.empty()) return;
    const std::vector<Event> events = standing(std::exchange(animal_, {}));
    for (const Event& event : events) {
      if (event.enclosure) apply_to_tub(event);
      apply(overview_.rules, event);
    }
    const auto animal = fold_animal(events);
    if (!animal) return;
    replace(overview_.collection, *animal);
    forecaster_.take(events);
  }

  // Events of an animal say of its tub only that there is one.
  void apply_to_tub(const Event& event) {
    overview_.collection.enclosures.try_emplace(*event.enclosure,
                                                EnclosureState{.code = *event.enclosure});
  }

  Overview& overview_;
  Forecaster& forecaster_;
  const Moment& as_of_;
  KioskId kiosk_;
  std::vector<Event> room_;
  std::vector<Event> animal_;
  bool room_told_ = false;
};

}  // namespace

Result<Overview> read_overview(LogStore& log, Forecaster& forecaster, const Moment& as_of,
                               Until until) {
  Overview overview;
  Reader reader(overview, forecaster, as_of, log.kiosk());
  const auto read = log.read_all([&](Event&& event) {
    if (until == Until::Everything || event.when.moment.utc <= as_of.utc)
      reader.take(std::move(event));
  });
  if (!read) return tl::unexpected(read.error());
  reader.finish();
  overview.forecasts = forecaster.all();
  return overview;
}

Result<Roster> read_roster(LogStore& log) {
  return log.read_kinds(roster_kinds()).map([](const std::vector<Event>& events) {
    return Roster{fold_collection(events), fold_people(events), fold_cover(events)};
  });
}

}  // namespace rackside

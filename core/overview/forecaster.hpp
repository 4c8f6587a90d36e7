#pragma once
// Forecasts for a whole collection, fed animal by animal.

#include <map>
#include <optional>
#include <vector>

#include "core/cover/foresee.hpp"
#include "core/forecast/collection_model.hpp"
#include "core/forecast/evidence.hpp"
#include "core/forecast/forecast.hpp"
#include "core/forecast/surroundings.hpp"

namespace rackside {

/// One object belongs to one thread at a time.
class Forecaster {
 public:
  /// Forgets all animals. `room` are the events that name no animal: where tubs stand, how warm
  /// the racks are. What was learnt before is where the next fit starts from.
  void begin(std::vector<Event> room, const Moment& as_of);
  /// All events of one animal.
  void take(const std::vector<Event>& events);
  /// Learns from all animals that were taken and forecasts the living ones.
  [[nodiscard]] std::map<AnimalId, Forecast> all();
  /// What is known now of the living ones as forecasts of the days to come, from what was learnt
  /// last; the first of `days` is the one that was begun with. Without reasons.
  [[nodiscard]] Outlook ahead(std::vector<Moment> days) const;
  /// The forecast for one animal from these of its events, without reasons.
  [[nodiscard]] std::optional<Forecast> plain(const std::vector<Event>& events,
                                              const Moment& as_of) const;
  /// The forecast for one animal, with its density day by day, whose events have changed, from what
  /// was learnt last. None when the events add no animal.
  struct One {
    Forecast forecast;
    MoultDensity density;
  };
  [[nodiscard]] std::optional<One> one(const std::vector<Event>& events, const Moment& as_of);

 private:
  Moment as_of_;
  Surroundings surroundings_;
  std::vector<Evidence> animals_;
  CollectionModel model_ = untaught_model();
};

}  // namespace rackside

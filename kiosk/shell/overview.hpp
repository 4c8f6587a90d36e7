#pragma once
// Everything the lists need, read from the log in one pass: who lives where and how each is, the
// rules, the air, and a forecast for every living animal.

#include <functional>
#include <memory>

#include "core/log/log_store.hpp"
#include "kiosk/model/intent.hpp"

namespace rackside::kiosk {

/// The port to the forecast. One object belongs to one thread at a time.
class Forecaster {
 public:
  virtual ~Forecaster() = default;

  /// Begins anew with an empty collection.
  virtual void begin() = 0;
  /// All events of one animal.
  virtual void learn(const AnimalId& animal, const std::vector<Event>& events) = 0;
  /// The forecasts for all living animals that were learnt.
  [[nodiscard]] virtual std::map<AnimalId, Forecast> all(Instant as_of) = 0;
  /// The forecast for one animal whose events have changed.
  [[nodiscard]] virtual Forecast one(const AnimalId& animal, const std::vector<Event>& events,
                                     Instant as_of) = 0;
};

/// Reads `log` animal by animal; holds no more than one animal's events at a time.
[[nodiscard]] Result<OverviewReady> read_overview(LogStore& log, Forecaster& forecaster,
                                                  Instant as_of);

[[nodiscard]] Result<Collection> read_roster(LogStore& log);

}  // namespace rackside::kiosk

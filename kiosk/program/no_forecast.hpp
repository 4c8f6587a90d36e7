#pragma once
#include "kiosk/shell/overview.hpp"

namespace rackside::kiosk {

class NoForecast : public Forecaster {
 public:
  void begin() override {}
  void learn(const AnimalId&, const std::vector<Event>&) override {}
  std::map<AnimalId, Forecast> all(Instant) override { return {}; }
  Forecast one(const AnimalId& animal, const std::vector<Event>&, Instant as_of) override {
    return Forecast{.animal = animal, .as_of = as_of, .moult_expected = false};
  }
};

}  // namespace rackside::kiosk

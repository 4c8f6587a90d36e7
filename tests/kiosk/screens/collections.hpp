#pragma once
// Kiosks in the states that strain the layout: long names, large numbers, much to say.

#include <functional>
#include <string>
#include <vector>

#include "kiosk/scene/panel.hpp"
#include "tests/fakes/table_kiosk.hpp"

namespace rackside::tests {

struct Situation {
  std::string name;
  std::function<kiosk::Model()> model;
};

[[nodiscard]] const std::vector<Situation>& situations();

/// The sizes every screen must fit.
[[nodiscard]] const std::vector<kiosk::Panel>& panels();

}  // namespace rackside::tests

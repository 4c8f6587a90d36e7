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

/// All of them.
[[nodiscard]] const std::vector<Situation>& situations();

// By subject, a file each.
[[nodiscard]] std::vector<Situation> walk_situations();
[[nodiscard]] std::vector<Situation> tub_situations();
[[nodiscard]] std::vector<Situation> staff_situations();
[[nodiscard]] std::vector<Situation> setup_situations();
[[nodiscard]] std::vector<Situation> hall_situations();
[[nodiscard]] std::vector<Situation> away_situations();

/// The sizes every screen must fit.
[[nodiscard]] const std::vector<kiosk::Panel>& panels();

}  // namespace rackside::tests

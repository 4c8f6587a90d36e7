#pragma once
// Invents the life of one animal and what its keeper wrote down about it.

#include <optional>
#include <random>
#include <string>
#include <vector>

#include "core/values/time.hpp"
#include "demo/collection/species.hpp"

namespace rackside::demo {

/// One row of events.csv. Empty text is an empty cell.
struct Row {
  Day day;
  std::string event, outcome, prey, count, size_mm, sign, value, unit, note;
};

struct Animal {
  std::string key;
  const Species* species = nullptr;
  std::string sex = "unknown";
  std::string stage;
  int instar = 3;
  Day acquired;
  std::string source;
  std::string rack, shelf, position;
  std::vector<Row> rows;
};

/// The same `random` gives the same life. It ends at `today`.
[[nodiscard]] Animal invent(const Species& species, std::string key, Day acquired, Day today,
                            int instar, std::mt19937_64& random);

}  // namespace rackside::demo

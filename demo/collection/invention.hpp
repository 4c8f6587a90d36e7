#pragma once
// What the demo's keeper wrote down about one animal.

#include <string>
#include <vector>

#include "demo/collection/life.hpp"

namespace rackside::demo {

/// One row of events.csv. Empty text is an empty cell.
struct Row {
  Day day;
  std::string event, outcome, prey, count, size_mm, sign, value, unit, note;
};

struct Animal {
  std::string key;
  const Species* species = nullptr;
  Life life;  // as it stands at the end of the record
  std::string stage;
  int instar = 3;
  Day acquired;
  bool ended = false;
  std::string source;
  std::string rack, shelf, position;
  std::vector<Row> rows;
};

/// The same dice give the same life. Its record ends at `today`.
[[nodiscard]] Animal invent(const Species& species, std::string key, Day acquired, Day today,
                            int instar, Dice& dice);

}  // namespace rackside::demo

#pragma once
// What somebody could say who knew how the invented world works and every animal's nature, but not
// what has happened unseen: paths of the true process, each weighed by how likely it makes the log.

#include <vector>

#include "tests/core/forecast/invented_collection.hpp"

namespace rackside::tests {

struct Oracle {
  std::vector<double> quantiles;  // 0.05 to 0.95, days after `as_of`
  double p_premoult = 0;
  double effective = 0;  // number of paths the weights amount to
};

[[nodiscard]] Oracle consult(const World& world, const InventedAnimal& animal,
                             const Evidence& evidence, double as_of, int paths, Dice& dice);

}  // namespace rackside::tests

#pragma once
// What somebody could say who knew how the invented world works, with every animal's nature or
// without, but not what has happened unseen: paths of the true process, each weighed by how likely
// it makes the log.

#include <vector>

#include "tests/core/forecast/invented_collection.hpp"

namespace rackside::tests {

struct Oracle {
  std::vector<double> quantiles;  // 0.05 to 0.95, days after `as_of`
  double p_premoult = 0;
  double effective = 0;  // number of paths the weights amount to
};

/// What an oracle knows of the animal beside the world's laws and its kind: its own pace and
/// appetite as they are, or only what its true cycles up to the last moult on record say of them
/// (where an adult's cycles follow a season, its nature all the same).
enum class Knows { Nature, Past };

[[nodiscard]] Oracle consult(const World& world, const InventedAnimal& animal,
                             const Evidence& evidence, double as_of, int paths, Dice& dice,
                             Knows knows = Knows::Nature);

}  // namespace rackside::tests

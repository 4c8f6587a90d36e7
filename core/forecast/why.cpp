#include "core/forecast/why.hpp"

namespace rackside {

std::vector<Reason> reasons(const CollectionModel&, const Evidence&, const Character&,
                            const Belief&, double) {
  return {};
}

}  // namespace rackside

#pragma once
// What a fit is made from: some animals of every species, so that its cost does not grow with the
// collection.

#include <cstdint>
#include <span>
#include <vector>

#include "core/forecast/collection_model.hpp"

namespace rackside {

struct FitSample {
  std::vector<const Evidence*> animals;
  /// Of hidden moults, one list an animal (traces.hpp); empty lists: not looked for yet.
  std::vector<std::vector<double>> traces;
  double as_of = 0;

  [[nodiscard]] bool any_trace() const;
};

/// Some animals of every species, evenly from the list, so that rare species are all there and the
/// choice stays the same from one fit to the next. Groups have no cycle of their own.
[[nodiscard]] FitSample sample_of(std::span<const Evidence> animals, double as_of);

void find_traces(FitSample& sample, const CollectionModel& model);

/// The cycles of the first `most` animals, species by species.
[[nodiscard]] std::vector<SpeciesHistories> histories_of(const CollectionModel& model,
                                                         const FitSample& sample,
                                                         std::size_t most = SIZE_MAX);

}  // namespace rackside

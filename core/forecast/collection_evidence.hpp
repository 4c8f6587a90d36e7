#pragma once
// A whole log as evidence, animal by animal, so that no more than one animal's events are held.

#include <vector>

#include "core/forecast/evidence.hpp"
#include "core/log/log_store.hpp"

namespace rackside {

/// Takes events in the order in which LogStore::read_all gives them: those without an animal first,
/// then animal by animal.
class CollectionEvidence {
 public:
  /// Events after `until` are as good as not there.
  explicit CollectionEvidence(Instant until) : until_(until) {}

  void take(Event&& event);
  [[nodiscard]] std::vector<Evidence> finish();

 private:
  void close_animal();

  Instant until_;
  std::vector<Event> room_;    // events that name no animal
  std::vector<Event> animal_;  // events of the animal at hand
  bool surroundings_known_ = false;
  Surroundings surroundings_;
  std::vector<Evidence> gathered_;
};

/// Every animal that had come by `until`, those that died or left among them. Errors: those of
/// LogStore::read_all.
[[nodiscard]] Result<std::vector<Evidence>> gather_collection(LogStore& log, Instant until);

}  // namespace rackside

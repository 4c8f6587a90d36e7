#include "core/forecast/collection_evidence.hpp"

namespace rackside {

void CollectionEvidence::take(Event&& event) {
  if (event.when.moment.utc > until_) return;
  if (!event.animal) {
    room_.push_back(std::move(event));
    return;
  }
  if (!animal_.empty() && animal_.front().animal != event.animal) close_animal();
  animal_.push_back(std::move(event));
}

void CollectionEvidence::close_animal() {
  if (!surroundings_known_) surroundings_ = gather_surroundings(std::move(room_), until_);
  surroundings_known_ = true;
  if (auto evidence = gather_evidence(std::move(animal_), until_, surroundings_))
    gathered_.push_back(std::move(*evidence));
  animal_.clear();
}

std::vector<Evidence> CollectionEvidence::finish() {
  if (!animal_.empty()) close_animal();
  return std::move(gathered_);
}

Result<std::vector<Evidence>> gather_collection(LogStore& log, Instant until) {
  CollectionEvidence collection(until);
  const auto read = log.read_all([&](Event&& event) { collection.take(std::move(event)); });
  if (!read) return tl::unexpected(read.error());
  return collection.finish();
}

}  // namespace rackside

#include "core/interchange/homes.hpp"

namespace rackside::interchange {

std::optional<Draft> first_home(const Draft& added, const std::optional<Code>& now_in) {
  if (!added.enclosure || added.enclosure == now_in) return std::nullopt;
  Draft draft;
  draft.animal = added.animal;
  draft.by = added.by;
  draft.when = {added.when.moment, Precision::Exact};  // a day alone would come back as its noon
  draft.details = Rehoused{*added.enclosure};
  return draft;
}

void Homes::add(const Draft& event) {
  if (!event.animal) return;
  const Instant at = event.when.moment.utc;
  if (std::holds_alternative<AnimalAdded>(event.details) && event.enclosure)
    homes_[*event.animal].emplace(at, *event.enclosure);
  if (const auto* moved = std::get_if<Rehoused>(&event.details))
    homes_[*event.animal].emplace(at, moved->to);
}

std::optional<Code> Homes::of(const AnimalId& animal, Instant at) const {
  const auto found = homes_.find(animal);
  if (found == homes_.end()) return std::nullopt;
  const auto after = found->second.upper_bound(at);
  if (after == found->second.begin()) return std::nullopt;
  return std::prev(after)->second;
}

}  // namespace rackside::interchange

#include "core/interchange/known_rows.hpp"

namespace rackside::interchange {

void KnownRows::count(Counts& counts, const Draft& event) const {
  if (auto cells = event_cells(event, keys_)) ++counts[*std::move(cells)];
}

KnownRows::Counts KnownRows::read(const std::optional<AnimalId>& animal) {
  Counts counts;
  if (!animal) {
    const auto readings =
        taken(log_.read_kinds({kind_name(TemperatureRead{}), kind_name(HumidityRead{})}));
    for (const Event& event : readings)
      if (!event.animal) count(counts, event);
    return counts;
  }
  const AnimalState* state = collection_.animal(*animal);
  if (state == nullptr) return counts;  // new in this import
  for (const Event& event : taken(log_.read_animal(*animal))) {
    count(counts, event);
    if (!std::holds_alternative<AnimalAdded>(event.details)) continue;
    if (const auto home = first_home(event, state->enclosure)) count(counts, *home);
  }
  return counts;
}

bool KnownRows::count_off(const Draft& event) {
  const auto cells = event_cells(event, keys_);
  if (!cells) return false;
  auto counts = counts_.find(event.animal);
  if (counts == counts_.end()) counts = counts_.emplace(event.animal, read(event.animal)).first;
  const auto found = counts->second.find(*cells);
  if (found == counts->second.end() || found->second == 0) return false;
  --found->second;
  return true;
}

}  // namespace rackside::interchange

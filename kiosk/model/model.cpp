#include "kiosk/model/model.hpp"

#include <algorithm>

#include "core/collection/place.hpp"

namespace rackside::kiosk {

std::optional<Notice> telling(const Model& model) {
  if (model.notice || model.reader_says.empty()) return model.notice;
  return Notice{Tone::Tell, model.reader_says};
}

std::optional<AnimalState> shown_animal(const Model& model) {
  if (!model.tub || !model.tub->animal) return std::nullopt;
  const AnimalState* animal = model.collection.animal(*model.tub->animal);
  if (animal == nullptr) return std::nullopt;
  return *animal;
}

std::vector<const EnclosureState*> walking_order(const Collection& collection) {
  std::vector<const EnclosureState*> tubs;
  for (const auto& [code, enclosure] : collection.enclosures)
    if (code.kind() == CodeKind::Enclosure) tubs.push_back(&enclosure);
  std::ranges::stable_sort(
      tubs, [](const auto* a, const auto* b) { return walks_before(a->place, b->place); });
  return tubs;
}

std::vector<std::string> racks_in(const Collection& collection) {
  std::vector<std::string> racks;
  for (const EnclosureState* tub : walking_order(collection))
    if (racks.empty() || racks.back() != tub->place.rack) racks.push_back(tub->place.rack);
  return racks;
}

}  // namespace rackside::kiosk

#include "core/collection/collection.hpp"

#include <algorithm>

namespace rackside {
namespace {

EnclosureState& enclosure_at(Collection& collection, const Code& code) {
  return collection.enclosures.try_emplace(code, EnclosureState{.code = code}).first->second;
}

void move_out(Collection& collection, const AnimalState& animal) {
  if (!animal.enclosure) return;
  std::erase(enclosure_at(collection, *animal.enclosure).residents, animal.id);
}

void move_in(Collection& collection, const AnimalState& animal) {
  if (!animal.enclosure) return;
  EnclosureState& enclosure = enclosure_at(collection, *animal.enclosure);
  enclosure.last_resident = animal.id;
  if (animal.life != Life::Living) return;
  const auto place = std::ranges::lower_bound(enclosure.residents, animal.id);
  if (place == enclosure.residents.end() || *place != animal.id)
    enclosure.residents.insert(place, animal.id);
}

void apply_to_enclosure(EnclosureState& enclosure, const Event& event) {
  if (const auto* added = std::get_if<EnclosureAdded>(&event.details))
    enclosure.place = added->place;
  if (const auto* moved = std::get_if<EnclosureMoved>(&event.details))
    enclosure.place = moved->place;
  if (std::holds_alternative<LabelPrinted>(event.details)) {
    enclosure.label_printed = event.when;
    enclosure.label_confirmed.reset();
  }
  if (std::holds_alternative<LabelConfirmed>(event.details) && !enclosure.label_confirmed)
    enclosure.label_confirmed = event.when;
}

}  // namespace

const AnimalState* Collection::animal(const AnimalId& id) const {
  const auto found = animals.find(id);
  return found == animals.end() ? nullptr : &found->second;
}

const AnimalState* Collection::animal_by_key(std::string_view key) const {
  const auto found =
      std::ranges::find_if(animals, [&](const auto& entry) { return entry.second.key == key; });
  return found == animals.end() ? nullptr : &found->second;
}

const EnclosureState* Collection::enclosure(const Code& code) const {
  const auto found = enclosures.find(code);
  return found == enclosures.end() ? nullptr : &found->second;
}

void apply(Collection& collection, const Event& event) {
  if (event.enclosure) apply_to_enclosure(enclosure_at(collection, *event.enclosure), event);
  if (!event.animal) return;
  const auto found = collection.animals.find(*event.animal);
  const bool adds = std::holds_alternative<AnimalAdded>(event.details);
  if (found == collection.animals.end() && !adds) return;
  AnimalState& animal = collection.animals[*event.animal];
  move_out(collection, animal);
  apply(animal, event);
  move_in(collection, animal);
}

void replace(Collection& collection, const AnimalState& animal) {
  AnimalState& known = collection.animals[animal.id];
  move_out(collection, known);
  known = animal;
  move_in(collection, known);
}

Collection fold_collection(std::vector<Event> events) {
  Collection collection;
  events = standing(std::move(events));
  // What was recorded of an animal before the day it came counts too, as in fold_animal.
  for (const Event& event : events)
    if (event.animal && std::holds_alternative<AnimalAdded>(event.details))
      collection.animals[*event.animal].id = *event.animal;
  for (const Event& event : events) apply(collection, event);
  return collection;
}

const std::vector<std::string_view>& roster_kinds() {
  static const std::vector<std::string_view> kinds{
      kind_name(EnclosureAdded{}), kind_name(EnclosureMoved{}), kind_name(LabelPrinted{}),
      kind_name(LabelConfirmed{}), kind_name(AnimalAdded{}),    "rehoused",
      kind_name(Died{}),           kind_name(Left{}),           kind_name(Sexed{}),
      kind_name(PersonAdded{}),    kind_name(PersonEnded{}),    kind_name(CoverPlanned{}),
      kind_name(CoverEnded{}),     kind_name(CoverNote{}),      kind_name(ContactSet{}),
      kind_name(Retracted{})};
  return kinds;
}

}  // namespace rackside

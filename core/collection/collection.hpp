#pragma once
// The whole collection: every animal and every tub, as their events leave them.

#include <map>
#include <optional>
#include <vector>

#include "core/collection/animal.hpp"
#include "core/event/event.hpp"

namespace rackside {

struct EnclosureState {
  Code code;
  Place place;
  std::optional<When> label_printed;    // last
  std::optional<When> label_confirmed;  // first scan after the last printing
  std::vector<AnimalId> residents;      // living, in the order of their ids
  std::optional<AnimalId> last_resident;

  bool operator==(const EnclosureState&) const = default;
};

struct Collection {
  std::map<AnimalId, AnimalState> animals;
  std::map<Code, EnclosureState> enclosures;

  bool operator==(const Collection&) const = default;

  [[nodiscard]] const AnimalState* animal(const AnimalId& id) const;
  [[nodiscard]] const AnimalState* animal_by_key(std::string_view key) const;
  [[nodiscard]] const EnclosureState* enclosure(const Code& code) const;
};

/// Events in any order, retractions among them. Fed with all events it knows everything; fed with
/// those of `roster_kinds` only it knows who lives where, which is what finding and listing need.
[[nodiscard]] Collection fold_collection(std::vector<Event> events);

/// Brings `collection` up to date with a standing event that happened last. Retractions and
/// records of the past need fold_collection again, or `replace` for the one animal they touch.
void apply(Collection& collection, const Event& event);

/// Puts `animal`, folded anew from all its events, in the place of what was known of it.
void replace(Collection& collection, const AnimalState& animal);

/// The names of the kinds that say who lives where and who works here, which a kiosk must know at
/// once. "retracted" is among them.
[[nodiscard]] const std::vector<std::string_view>& roster_kinds();

}  // namespace rackside

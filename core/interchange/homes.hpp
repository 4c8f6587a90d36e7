#pragma once
// Which tub an animal lived in, and when.
//
// In animals.csv the column `enclosure` says where an animal lives now, with the rack and shelf
// where that tub stands: that is what a keeper writes down, and what labels need. Where it lived
// first is then one more row "rehoused" in events.csv, at the moment it came. Without that row the
// first tub would be forgotten; without the present one its place would be.

#include <map>

#include "core/collection/collection.hpp"
#include "core/event/event.hpp"

namespace rackside::interchange {

/// The row "rehoused" for the first tub of an animal that has left it since; `added` is its
/// AnimalAdded, `now_in` where it lives now.
[[nodiscard]] std::optional<Draft> first_home(const Draft& added,
                                              const std::optional<Code>& now_in);

class Homes {
 public:
  /// Takes note of AnimalAdded with a tub and of Rehoused; everything else is passed over.
  void add(const Draft& event);
  /// None before the animal had a tub.
  [[nodiscard]] std::optional<Code> of(const AnimalId& animal, Instant at) const;

 private:
  std::map<AnimalId, std::multimap<Instant, Code>> homes_;
};

}  // namespace rackside::interchange

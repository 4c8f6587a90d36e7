#pragma once
// The demo's whole collection, and as the two interchange files.

#include <iosfwd>

#include "demo/collection/invention.hpp"

namespace rackside::demo {

/// `tubs` animals on racks A, B, C ..., whose records end at `today`.
[[nodiscard]] std::vector<Animal> invent_collection(int tubs, Day today, Dice& dice);

void write_animals(std::ostream& out, const std::vector<Animal>& animals);
void write_events(std::ostream& out, const std::vector<Animal>& animals);
/// One reading a week in each rack, as further rows of the events.
void write_climate(std::ostream& out, Day today, Dice& dice);

}  // namespace rackside::demo

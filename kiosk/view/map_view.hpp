#pragma once
// What the shelf map says: the racks as they stand, a cell a tub. Only the cells that are shown are
// worked out: a room may hold thousands.

#include <optional>
#include <string>
#include <vector>

#include "kiosk/model/model.hpp"
#include "kiosk/scene/mark.hpp"

namespace rackside::kiosk {

/// A shelf with its tubs from left to right. Where positions are whole numbers, a place without a
/// tub stays a gap, as it is on the shelf.
struct MapShelf {
  std::string shelf;
  std::vector<std::optional<Code>> places;
  bool operator==(const MapShelf&) const = default;
};

struct MapCell {
  std::string position;
  std::string letters;  // the first two of its condition's word
  std::string word;     // "premoult", for the legend
  Mark mark = Mark::None;
  bool due = false;
  bool last = false;  // the tub that was open last
  bool operator==(const MapCell&) const = default;
};

struct RackLine {
  std::string rack;
  std::string title;   // "rack A"
  std::string detail;  // "120 tubs, 14 due"
  bool operator==(const RackLine&) const = default;
};

/// The first of all shelves is the upper one, each in the order of positions.
[[nodiscard]] std::vector<MapShelf> view_rack(const Model& model, const std::string& rack);
[[nodiscard]] MapCell view_cell(const Model& model, const Code& tub);
[[nodiscard]] std::vector<RackLine> view_racks(const Model& model);
/// "rack A", or "no rack given".
[[nodiscard]] std::string rack_title(const std::string& rack);

}  // namespace rackside::kiosk

#pragma once
// Labels for what has a name: shelves, and people.

#include <string>
#include <vector>

#include "core/collection/collection.hpp"
#include "labels/label/label_content.hpp"

namespace rackside {

struct ShelfName {
  std::string rack;
  std::string shelf;
  bool operator==(const ShelfName&) const = default;
};

/// Every shelf on which a tub stands, in the order of a walk along the racks.
[[nodiscard]] std::vector<ShelfName> shelves_in(const Collection& collection);

[[nodiscard]] LabelContent shelf_label(const ShelfName& shelf);
[[nodiscard]] LabelContent badge(const std::string& person);

}  // namespace rackside

#pragma once
// Labels for the tests of rendering, proof and reading.

#include <string>
#include <vector>

#include "labels/label/label_content.hpp"
#include "labels/render/label_sheet.hpp"

namespace rackside::tests {

/// A code whose body is `number` in the code alphabet, or the next one that has a check character.
[[nodiscard]] Code numbered_code(unsigned number);
/// Labels of invented slings, codes from `first` on.
[[nodiscard]] std::vector<LabelContent> sling_labels(int count, unsigned first = 1);
/// Any species name: two words of letters, sometimes long.
[[nodiscard]] std::string random_species(unsigned seed);
/// A built-in stock.
[[nodiscard]] Stock stock(const std::string& name);

}  // namespace rackside::tests

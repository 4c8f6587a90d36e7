#pragma once
// A label laid out: where the symbol and every line stand. Pure values; labels/render draws them.

#include <optional>
#include <string>
#include <vector>

#include "labels/label/label_content.hpp"
#include "labels/label/symbol_size.hpp"
#include "labels/label/text_ruler.hpp"

namespace rackside {

/// Millimetres from the label's top left corner, as everything here.
struct PlacedSymbol {
  SymbolSize size;
  double x = 0;  // of the quiet zone's corner
  double y = 0;
  bool operator==(const PlacedSymbol&) const = default;
};

struct PlacedText {
  Face face = Face::Text;
  double size = 0;  // one em
  double x = 0;     // left end of the baseline
  double y = 0;
  std::string text;
  bool operator==(const PlacedText&) const = default;
};

/// A triangle with an exclamation mark in a square of `size`.
struct PlacedWarning {
  double size = 0;
  double x = 0;
  double y = 0;
  bool operator==(const PlacedWarning&) const = default;
};

struct LabelPicture {
  PlacedSymbol symbol;
  std::vector<PlacedText> texts;
  std::optional<PlacedWarning> warning;
  std::vector<std::string> left_out;  // "date", "end of the species name": for a sentence

  bool operator==(const LabelPicture&) const = default;
};

}  // namespace rackside

#pragma once
// A ruler for tests without a text library: every byte of a letter is equally wide.

#include "labels/label/text_ruler.hpp"

namespace rackside::tests {

class FixedRuler : public TextRuler {
 public:
  [[nodiscard]] double width(Face face, std::string_view text) const override {
    return static_cast<double>(text.size()) * (face == Face::Code ? 0.6 : 0.55);
  }
};

}  // namespace rackside::tests

#pragma once
// The words of a label in the room beside or below its symbol. What does not fit is made smaller,
// then shorter, then left out, the least needed first.

#include <string>
#include <vector>

#include "labels/label/label_picture.hpp"

namespace rackside {

struct TextRoom {
  double x = 0;  // millimetres on the label
  double y = 0;
  double width = 0;
  double height = 0;
};

struct TextBlock {
  std::vector<PlacedText> texts;
  std::optional<PlacedWarning> warning;
  std::vector<std::string> left_out;
  bool has_code = false;
};

[[nodiscard]] TextBlock fit_text(const LabelContent& content, const TextRoom& room,
                                 const TextRuler& ruler);

}  // namespace rackside

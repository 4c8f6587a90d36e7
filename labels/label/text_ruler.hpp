#pragma once
// How wide a text is. The adapter over the text library is in labels/render.

#include <string_view>

namespace rackside {

enum class Face {
  Code,  // a monospaced face whose characters cannot be taken for each other
  Text,
  TextBold,
};

class TextRuler {
 public:
  virtual ~TextRuler() = default;
  /// In ems: multiply by the size of the letters.
  [[nodiscard]] virtual double width(Face face, std::string_view text) const = 0;
};

/// A line takes this many ems from top to bottom; its baseline stands `baseline_ems` below the top.
inline constexpr double line_ems = 1.22;
inline constexpr double baseline_ems = 0.94;

}  // namespace rackside

#pragma once
// The port through which the layout measures text. The adapter over SDL_ttf is in kiosk/draw.

#include <string_view>

namespace rackside::kiosk {

enum class Face { Regular, Bold, Italic, Code };

/// A face at a size; `pixels` is the em height, a whole number.
struct Style {
  Face face = Face::Regular;
  int pixels = 16;
  bool operator==(const Style&) const = default;
};

class TextMetrics {
 public:
  virtual ~TextMetrics() = default;

  /// The width of one line of UTF-8 text, in pixels.
  [[nodiscard]] virtual double width(std::string_view text, Style style) const = 0;
  /// From one baseline to the next.
  [[nodiscard]] virtual double line_height(Style style) const = 0;
  /// The height of a capital letter, for an em of one pixel.
  [[nodiscard]] virtual double capital_height(Face face) const = 0;
};

}  // namespace rackside::kiosk

#pragma once
// Text on paper, by Pango over Cairo's FreeType and fontconfig backends: other scripts, combining
// marks and right-to-left text come out as their readers expect.

#include <cairo.h>

#include <memory>
#include <string>
#include <string_view>

#include "labels/label/text_ruler.hpp"

namespace rackside {

/// Measures and draws; layouts are kept, since a batch repeats most of its words. Each thread needs
/// its own.
class PangoText : public TextRuler {
 public:
  PangoText();
  ~PangoText() override;
  PangoText(const PangoText&) = delete;
  PangoText& operator=(const PangoText&) = delete;

  [[nodiscard]] double width(Face face, std::string_view text) const override;

  /// Draws `text` with the left end of its baseline at x, y and letters of `size`, in the units of
  /// `canvas`.
  void draw(cairo_t* canvas, Face face, double size, double x, double y,
            std::string_view text) const;

 private:
  struct Kept;
  std::unique_ptr<Kept> kept_;
};

}  // namespace rackside

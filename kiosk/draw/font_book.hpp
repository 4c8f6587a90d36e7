#pragma once
// The faces at every size that was asked for, through SDL_ttf. Measures text for the layout and
// hands fonts to the drawing.

#include <map>
#include <string>
#include <unordered_map>
#include <utility>

#include "core/values/result.hpp"
#include "kiosk/draw/sdl_handles.hpp"
#include "kiosk/scene/text_metrics.hpp"

namespace rackside::kiosk {

class FontBook : public TextMetrics {
 public:
  /// Errors: NotFound when a face is not on this machine.
  [[nodiscard]] static Result<std::unique_ptr<FontBook>> open(const std::string& program);

  [[nodiscard]] double width(std::string_view text, Style style) const override;
  [[nodiscard]] double line_height(Style style) const override;
  [[nodiscard]] double capital_height(Face face) const override;

  [[nodiscard]] TTF_Font* font(Style style) const;

 private:
  FontBook() = default;

  TtfLibrary library_;
  std::map<Face, std::string> paths_;
  mutable std::map<std::pair<Face, int>, Font> fonts_;
  mutable std::unordered_map<std::string, double> widths_;
};

}  // namespace rackside::kiosk

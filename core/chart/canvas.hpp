#pragma once
// A sheet to draw a chart on: the few strokes that charts need, over Cairo.

#include <cairo.h>

#include <filesystem>
#include <memory>
#include <string>

#include "core/values/result.hpp"

namespace rackside {

struct Box {
  double left = 0, top = 0, width = 0, height = 0;
};

enum class Ink { Text, Axis, Faint, First, Others };
enum class Align { Left, Middle, Right };

class Canvas {
 public:
  /// Size in points (SVG) or pixels (PNG). Errors: BadInput for another ending than those.
  [[nodiscard]] static Result<Canvas> open(const std::filesystem::path& file, double width,
                                           double height);

  void rectangle(const Box& box, Ink ink);
  void line(double x1, double y1, double x2, double y2, Ink ink, double width = 1);
  void dot(double x, double y, double radius, Ink ink);
  void text(double x, double y, const std::string& words, double size, Align align = Align::Left);
  /// Errors: Broken.
  [[nodiscard]] Result<void> finish();

 private:
  struct Free {
    void operator()(cairo_t* cairo) const { cairo_destroy(cairo); }
    void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
  };
  Canvas() = default;
  void dip(Ink ink);

  std::filesystem::path file_;
  std::unique_ptr<cairo_surface_t, Free> surface_;
  std::unique_ptr<cairo_t, Free> cairo_;
};

}  // namespace rackside

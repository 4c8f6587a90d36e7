#include "kiosk/draw/shapes.hpp"

#include <cairo.h>

#include <algorithm>
#include <cmath>

namespace rackside::kiosk {
namespace {

using CairoSurface = std::unique_ptr<cairo_surface_t, Freed<cairo_surface_destroy>>;
using Cairo = std::unique_ptr<cairo_t, Freed<cairo_destroy>>;

// Cairo's pixels are premultiplied; SDL blends straight ones.
void unmultiply(SDL_Surface& surface, Colour colour) {
  for (int y = 0; y < surface.h; ++y) {
    auto* row = reinterpret_cast<std::uint32_t*>(static_cast<std::uint8_t*>(surface.pixels) +
                                                 y * surface.pitch);
    for (int x = 0; x < surface.w; ++x)
      row[x] = (row[x] & 0xFF000000u) | static_cast<std::uint32_t>(colour.red) << 16 |
               static_cast<std::uint32_t>(colour.green) << 8 | colour.blue;
  }
}

template <class Draw>
Surface painted(int width, int height, Colour colour, const Draw& draw) {
  Surface surface(SDL_CreateRGBSurfaceWithFormat(0, std::max(1, width), std::max(1, height), 32,
                                                 SDL_PIXELFORMAT_ARGB8888));
  if (!surface) return surface;
  const CairoSurface target(cairo_image_surface_create_for_data(
      static_cast<unsigned char*>(surface->pixels), CAIRO_FORMAT_ARGB32, surface->w, surface->h,
      surface->pitch));
  const Cairo cairo(cairo_create(target.get()));
  cairo_set_source_rgb(cairo.get(), colour.red / 255.0, colour.green / 255.0, colour.blue / 255.0);
  cairo_set_line_cap(cairo.get(), CAIRO_LINE_CAP_ROUND);
  cairo_set_line_join(cairo.get(), CAIRO_LINE_JOIN_ROUND);
  draw(cairo.get());
  cairo_surface_flush(target.get());
  unmultiply(*surface, colour);
  return surface;
}

void trace(cairo_t* cairo, const std::vector<Spot>& points, bool closed) {
  bool first = true;
  for (const Spot& point : points) {
    if (first)
      cairo_move_to(cairo, point.x, point.y);
    else
      cairo_line_to(cairo, point.x, point.y);
    first = false;
  }
  if (closed) cairo_close_path(cairo);
}

}  // namespace

SDL_Rect bounds_of(const Path& path) {
  double left = 1e9, top = 1e9, right = -1e9, bottom = -1e9;
  for (const Spot& point : path.points) {
    left = std::min(left, point.x);
    right = std::max(right, point.x);
    top = std::min(top, point.y);
    bottom = std::max(bottom, point.y);
  }
  const double margin = path.filled ? 1 : path.width / 2 + 1;
  const int x = static_cast<int>(std::floor(left - margin));
  const int y = static_cast<int>(std::floor(top - margin));
  return {x, y, static_cast<int>(std::ceil(right + margin)) - x,
          static_cast<int>(std::ceil(bottom + margin)) - y};
}

Surface paint(const Path& path, Colour colour) {
  const SDL_Rect bounds = bounds_of(path);
  return painted(bounds.w, bounds.h, colour, [&](cairo_t* cairo) {
    cairo_translate(cairo, -bounds.x, -bounds.y);
    trace(cairo, path.points, path.closed);
    cairo_set_line_width(cairo, path.width);
    if (path.filled)
      cairo_fill(cairo);
    else
      cairo_stroke(cairo);
  });
}

Surface paint(Mark mark, int side, double width, Colour colour) {
  return painted(side, side, colour, [&](cairo_t* cairo) {
    const double size = side - 2 * width;
    for (const Stroke& stroke : strokes(mark)) {
      std::vector<Spot> points = stroke.points;
      for (Spot& point : points) point = {width + point.x * size, width + point.y * size};
      trace(cairo, points, stroke.closed);
      cairo_set_line_width(cairo, width);
      if (stroke.filled) cairo_fill_preserve(cairo);
      cairo_stroke(cairo);
    }
  });
}

}  // namespace rackside::kiosk

#include "kiosk/draw/canvas.hpp"

#include <cairo.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "kiosk/draw/shapes.hpp"

namespace rackside::kiosk {
namespace {

SDL_FRect as_rect(const Box& box) {
  return {static_cast<float>(std::round(box.x)), static_cast<float>(std::round(box.y)),
          static_cast<float>(std::round(box.right()) - std::round(box.x)),
          static_cast<float>(std::round(box.bottom()) - std::round(box.y))};
}

std::string key_of(Colour colour) {
  return fmt::format("{:02x}{:02x}{:02x}", colour.red, colour.green, colour.blue);
}

// Positions to a quarter of a pixel: enough for the eye, and equal shapes stay equal.
std::string key_of(const Path& path, const SDL_Rect& bounds) {
  std::string key = fmt::format("p{}{}{:.1f}:", path.closed, path.filled, path.width);
  for (const Spot& point : path.points)
    fmt::format_to(std::back_inserter(key), "{:.0f},{:.0f};", 4 * (point.x - bounds.x),
                   4 * (point.y - bounds.y));
  return key;
}

}  // namespace

void Canvas::draw(const Scene& scene, const Palette& palette, const Touching& touching) {
  palette_ = &palette;
  const Colour paper = palette.of(Ink::Paper);
  SDL_SetRenderDrawBlendMode(renderer_, SDL_BLENDMODE_NONE);
  SDL_SetRenderDrawColor(renderer_, paper.red, paper.green, paper.blue, 255);
  SDL_RenderClear(renderer_);
  for (const Item& item : scene.items) std::visit([this](const auto& it) { draw(it); }, item);
  if (touching.pressed && *touching.pressed < scene.targets.size())
    frame(scene.targets[*touching.pressed].box, Ink::Text, 4);
  if (touching.focused && *touching.focused < scene.targets.size())
    frame(scene.targets[*touching.focused].box, Ink::Accent, 3);
  const bool live = std::ranges::any_of(
      scene.items, [](const Item& item) { return std::holds_alternative<LivePicture>(item); });
  if (!live) live_.clear();
  cache_.end_frame();
}

void Canvas::draw(const Fill& fill) {
  const Colour colour = palette_->of(fill.ink);
  const SDL_FRect rect = as_rect(fill.box);
  SDL_SetRenderDrawColor(renderer_, colour.red, colour.green, colour.blue, 255);
  SDL_RenderFillRectF(renderer_, &rect);
}

void Canvas::draw(const Text& text) {
  const Colour colour = palette_->of(text.ink);
  const std::string key = fmt::format(
      "t{}{}{}{}", key_of(colour), static_cast<int>(text.style.face), text.style.pixels, text.text);
  SDL_Texture* texture = cache_.get(key, [&] {
    return Surface(TTF_RenderUTF8_Blended(fonts_.font(text.style), text.text.c_str(),
                                          {colour.red, colour.green, colour.blue, 255}));
  });
  copy(texture, text.box.x, text.box.y);
}

void Canvas::draw(const Path& path) {
  if (path.points.size() < 2) return;
  const Colour colour = palette_->of(path.ink);
  const SDL_Rect bounds = bounds_of(path);
  copy(cache_.get(key_of(colour) + key_of(path, bounds), [&] { return paint(path, colour); }),
       bounds.x, bounds.y);
}

void Canvas::draw(const MarkAt& mark) {
  const Colour colour = palette_->of(mark.ink);
  const int side = static_cast<int>(std::round(mark.box.width));
  const std::string key =
      fmt::format("m{}{}:{}:{:.1f}", key_of(colour), static_cast<int>(mark.mark), side, mark.width);
  copy(cache_.get(key, [&] { return paint(mark.mark, side, mark.width, colour); }), mark.box.x,
       mark.box.y);
}

// In the lighter of the palette's two main colours, which is what its light parts are to look like.
void Canvas::draw(const LivePicture& picture) {
  const auto pixels = newest_ ? newest_() : nullptr;
  if (!pixels) return draw(Fill{picture.box, Ink::Slip});
  const Colour paper = palette_->of(Ink::Paper), text = palette_->of(Ink::Text);
  live_.draw(*pixels, picture.number, as_rect(picture.box),
             contrast(paper, Colour{}) > contrast(text, Colour{}) ? paper : text);
}

void Canvas::frame(const Box& box, Ink ink, double width) {
  Box rest = box;
  draw(Fill{rest.take_top(width), ink});
  draw(Fill{rest.take_bottom(width), ink});
  draw(Fill{rest.take_left(width), ink});
  draw(Fill{rest.take_right(width), ink});
}

void Canvas::copy(SDL_Texture* texture, double x, double y) {
  if (texture == nullptr) return;
  int width = 0;
  int height = 0;
  SDL_QueryTexture(texture, nullptr, nullptr, &width, &height);
  const SDL_Rect place{static_cast<int>(std::round(x)), static_cast<int>(std::round(y)), width,
                       height};
  SDL_RenderCopy(renderer_, texture, nullptr, &place);
}

Result<void> Canvas::save_png(const std::string& path) const {
  int width = 0;
  int height = 0;
  SDL_GetRendererOutputSize(renderer_, &width, &height);
  const int stride = cairo_format_stride_for_width(CAIRO_FORMAT_RGB24, width);
  std::vector<unsigned char> pixels(static_cast<std::size_t>(stride * height));
  SDL_RenderReadPixels(renderer_, nullptr, SDL_PIXELFORMAT_ARGB8888, pixels.data(), stride);
  const std::unique_ptr<cairo_surface_t, Freed<cairo_surface_destroy>> surface(
      cairo_image_surface_create_for_data(pixels.data(), CAIRO_FORMAT_RGB24, width, height,
                                          stride));
  if (cairo_surface_write_to_png(surface.get(), path.c_str()) != CAIRO_STATUS_SUCCESS)
    return failure(ErrorKind::ReadOnly, "The picture could not be written to " + path + ".");
  return {};
}

}  // namespace rackside::kiosk

#pragma once
// Draws scenes through SDL.

#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "kiosk/draw/font_book.hpp"
#include "kiosk/draw/live_texture.hpp"
#include "kiosk/draw/texture_cache.hpp"
#include "kiosk/scene/palette.hpp"
#include "kiosk/scene/scene.hpp"

namespace rackside::kiosk {

/// What the hand is doing just now, drawn over the scene.
struct Touching {
  std::optional<std::size_t> pressed;  // indices into the scene's targets
  std::optional<std::size_t> focused;
  bool operator==(const Touching&) const = default;
};

class Canvas {
 public:
  /// Where LivePicture finds its pixels: that picture or a newer one, or none.
  using NewestPicture = std::function<std::shared_ptr<const GreyImage>()>;

  Canvas(SDL_Renderer* renderer, const FontBook& fonts, NewestPicture newest = {})
      : renderer_(renderer),
        fonts_(fonts),
        newest_(std::move(newest)),
        cache_(renderer),
        live_(renderer) {}

  void draw(const Scene& scene, const Palette& palette, const Touching& touching);
  /// Forgets its textures: the renderer has lost them.
  void forget() {
    cache_.clear();
    live_.clear();
  }
  /// What was drawn last, as a PNG file. Errors: ReadOnly when it cannot be written.
  [[nodiscard]] Result<void> save_png(const std::string& path) const;

 private:
  void draw(const Fill& fill);
  void draw(const Text& text);
  void draw(const Path& path);
  void draw(const MarkAt& mark);
  void draw(const LivePicture& picture);
  void frame(const Box& box, Ink ink, double width);
  void copy(SDL_Texture* texture, double x, double y);

  SDL_Renderer* renderer_;
  const FontBook& fonts_;
  NewestPicture newest_;
  TextureCache cache_;
  LiveTexture live_;
  const Palette* palette_ = nullptr;
};

}  // namespace rackside::kiosk

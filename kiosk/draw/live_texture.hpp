#pragma once
// The camera's picture on the screen.

#include <cstdint>

#include "kiosk/draw/sdl_handles.hpp"
#include "kiosk/scene/palette.hpp"
#include "labels/reader/grey_image.hpp"

namespace rackside::kiosk {

/// One texture that each new picture is written into.
class LiveTexture {
 public:
  explicit LiveTexture(SDL_Renderer* renderer) : renderer_(renderer) {}

  /// Fills `place` with the picture in shades of `colour`: in the dark the screen stays as red as
  /// it is.
  void draw(const GreyImage& picture, std::uint64_t number, const SDL_FRect& place, Colour colour);
  void clear();

 private:
  [[nodiscard]] bool take_in(const GreyImage& picture);

  SDL_Renderer* renderer_;
  Texture texture_;
  int width_ = 0;
  int height_ = 0;
  std::uint64_t number_ = 0;  // of what it shows; 0: nothing
};

}  // namespace rackside::kiosk

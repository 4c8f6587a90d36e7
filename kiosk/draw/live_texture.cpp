#include "kiosk/draw/live_texture.hpp"

namespace rackside::kiosk {

void LiveTexture::draw(const GreyImage& picture, std::uint64_t number, const SDL_FRect& place,
                       Colour colour) {
  if (number != number_ && !take_in(picture)) return clear();
  number_ = number;
  SDL_SetTextureColorMod(texture_.get(), colour.red, colour.green, colour.blue);
  SDL_RenderCopyF(renderer_, texture_.get(), nullptr, &place);
}

void LiveTexture::clear() {
  texture_.reset();
  number_ = 0;
}

bool LiveTexture::take_in(const GreyImage& picture) {
  if (!texture_ || width_ != picture.width || height_ != picture.height) {
    texture_.reset(SDL_CreateTexture(renderer_, SDL_PIXELFORMAT_ARGB8888,
                                     SDL_TEXTUREACCESS_STREAMING, picture.width, picture.height));
    width_ = picture.width;
    height_ = picture.height;
  }
  void* pixels = nullptr;
  int pitch = 0;
  if (!texture_ || SDL_LockTexture(texture_.get(), nullptr, &pixels, &pitch) != 0) return false;
  const std::uint8_t* grey = picture.pixels.data();
  for (int y = 0; y < picture.height; ++y) {
    auto* row = reinterpret_cast<std::uint32_t*>(static_cast<std::uint8_t*>(pixels) + y * pitch);
    for (int x = 0; x < picture.width; ++x) row[x] = 0xFF000000u | *grey++ * 0x010101u;
  }
  SDL_UnlockTexture(texture_.get());
  return true;
}

}  // namespace rackside::kiosk

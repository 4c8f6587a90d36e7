#include "kiosk/draw/texture_cache.hpp"

namespace rackside::kiosk {

SDL_Texture* TextureCache::get(const std::string& key, const Make& make) {
  auto found = slots_.find(key);
  if (found == slots_.end()) {
    const Surface surface = make();
    if (!surface) return nullptr;
    Texture texture(SDL_CreateTextureFromSurface(renderer_, surface.get()));
    if (!texture) return nullptr;
    SDL_SetTextureBlendMode(texture.get(), SDL_BLENDMODE_BLEND);
    found = slots_.emplace(key, Slot{std::move(texture)}).first;
  }
  found->second.used = frame_;
  return found->second.texture.get();
}

void TextureCache::end_frame() {
  std::erase_if(slots_, [&](const auto& slot) { return frame_ - slot.second.used > 1; });
  ++frame_;
}

}  // namespace rackside::kiosk

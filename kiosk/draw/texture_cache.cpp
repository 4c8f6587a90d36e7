#include "kiosk/draw/texture_cache.hpp"

#include <algorithm>
#include <vector>

namespace rackside::kiosk {
namespace {

// A full screen at 1280 by 800 needs 1 to 3 MB of texts and shapes; a few screens back and forth
// are then drawn from what is there.
constexpr std::size_t budget = 8u << 20;

}  // namespace

SDL_Texture* TextureCache::get(const std::string& key, const Make& make) {
  auto found = slots_.find(key);
  if (found == slots_.end()) {
    const Surface surface = make();
    if (!surface) return nullptr;
    Texture texture(SDL_CreateTextureFromSurface(renderer_, surface.get()));
    if (!texture) return nullptr;
    SDL_SetTextureBlendMode(texture.get(), SDL_BLENDMODE_BLEND);
    const auto bytes = static_cast<std::size_t>(surface->pitch) * static_cast<unsigned>(surface->h);
    found = slots_.emplace(key, Slot{std::move(texture), bytes}).first;
    bytes_ += bytes;
  }
  found->second.used = frame_;
  return found->second.texture.get();
}

void TextureCache::end_frame() {
  ++frame_;
  if (bytes_ <= budget) return;
  std::vector<decltype(slots_)::iterator> oldest;
  for (auto slot = slots_.begin(); slot != slots_.end(); ++slot)
    if (slot->second.used + 1 != frame_) oldest.push_back(slot);
  std::ranges::sort(oldest, {}, [](const auto& slot) { return slot->second.used; });
  for (const auto& slot : oldest)
    if (bytes_ > budget / 2) let_go_of(slot);
}

void TextureCache::clear() {
  slots_.clear();
  bytes_ = 0;
}

void TextureCache::let_go_of(std::unordered_map<std::string, Slot>::iterator slot) {
  bytes_ -= slot->second.bytes;
  slots_.erase(slot);
}

}  // namespace rackside::kiosk

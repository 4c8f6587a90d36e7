#pragma once
// Texts and shapes as textures. What was not drawn in the last two frames is let go.

#include <functional>
#include <string>
#include <unordered_map>

#include "kiosk/draw/sdl_handles.hpp"

namespace rackside::kiosk {

class TextureCache {
 public:
  using Make = std::function<Surface()>;

  explicit TextureCache(SDL_Renderer* renderer) : renderer_(renderer) {}

  /// The texture under `key`, made when it is not there. Null when it cannot be made.
  [[nodiscard]] SDL_Texture* get(const std::string& key, const Make& make);
  /// Ends a frame: lets go of what it and the one before did not use.
  void end_frame();
  void clear() { slots_.clear(); }

 private:
  struct Slot {
    Texture texture;
    unsigned used = 0;
  };

  SDL_Renderer* renderer_;
  std::unordered_map<std::string, Slot> slots_;
  unsigned frame_ = 0;
};

}  // namespace rackside::kiosk

#pragma once
// Texts and shapes as textures, as many as a budget holds; what was not drawn for longest goes
// first.

#include <cstdint>
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
  /// Ends a frame: keeps to the budget. What the frame used stays whatever it takes.
  void end_frame();
  void clear();

 private:
  struct Slot {
    Texture texture;
    std::size_t bytes = 0;
    std::uint64_t used = 0;  // the frame
  };

  void let_go_of(std::unordered_map<std::string, Slot>::iterator slot);

  SDL_Renderer* renderer_;
  std::unordered_map<std::string, Slot> slots_;
  std::size_t bytes_ = 0;
  std::uint64_t frame_ = 0;
};

}  // namespace rackside::kiosk

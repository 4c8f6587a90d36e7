#pragma once
// SDL objects that free themselves.

#include <SDL.h>
#include <SDL_ttf.h>

#include <memory>

namespace rackside::kiosk {

template <auto function>
struct Freed {
  template <class T>
  void operator()(T* object) const {
    function(object);
  }
};

using Window = std::unique_ptr<SDL_Window, Freed<SDL_DestroyWindow>>;
using Renderer = std::unique_ptr<SDL_Renderer, Freed<SDL_DestroyRenderer>>;
using Texture = std::unique_ptr<SDL_Texture, Freed<SDL_DestroyTexture>>;
using Surface = std::unique_ptr<SDL_Surface, Freed<SDL_FreeSurface>>;
using Font = std::unique_ptr<TTF_Font, Freed<TTF_CloseFont>>;

/// SDL_ttf for the life of this object.
class TtfLibrary {
 public:
  TtfLibrary() { TTF_Init(); }
  ~TtfLibrary() { TTF_Quit(); }
  TtfLibrary(const TtfLibrary&) = delete;
  TtfLibrary& operator=(const TtfLibrary&) = delete;
};

}  // namespace rackside::kiosk

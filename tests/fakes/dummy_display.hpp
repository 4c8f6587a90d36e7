#pragma once
// SDL's own stand-in for a display, with a window that is drawn into memory.

#include <SDL.h>

#include "kiosk/draw/sdl_handles.hpp"

namespace rackside::tests {

struct DummyDisplay {
  DummyDisplay() {
    SDL_SetHint(SDL_HINT_VIDEODRIVER, "dummy");
    SDL_SetHint(SDL_HINT_FRAMEBUFFER_ACCELERATION, "0");
    SDL_Init(SDL_INIT_VIDEO);
    window.reset(SDL_CreateWindow("", 0, 0, 1280, 800, SDL_WINDOW_RESIZABLE));
    renderer.reset(SDL_CreateRenderer(window.get(), -1, SDL_RENDERER_SOFTWARE));
  }
  ~DummyDisplay() {
    renderer.reset();
    window.reset();
    SDL_Quit();
  }
  DummyDisplay(const DummyDisplay&) = delete;
  DummyDisplay& operator=(const DummyDisplay&) = delete;

  kiosk::Window window;
  kiosk::Renderer renderer;
};

}  // namespace rackside::tests

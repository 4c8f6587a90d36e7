#pragma once
// What hands and a keyboard-wedge scanner give to SDL.

#include <SDL.h>

#include <string_view>
#include <vector>

namespace rackside::tests {

inline SDL_Event key_down(SDL_Keycode code, Uint16 mod = 0) {
  SDL_Event event{};
  event.key = {.type = SDL_KEYDOWN, .timestamp = SDL_GetTicks()};
  event.key.keysym.sym = code;
  event.key.keysym.mod = mod;
  return event;
}

/// A whole burst and the Enter behind it, as a scanner types it.
inline std::vector<SDL_Event> burst(std::string_view text) {
  std::vector<SDL_Event> events;
  for (const char c : text) {
    events.push_back(key_down(SDL_Keycode(c)));
    SDL_Event typed{};
    typed.text = {.type = SDL_TEXTINPUT, .timestamp = SDL_GetTicks()};
    typed.text.text[0] = c;
    events.push_back(typed);
  }
  events.push_back(key_down(SDLK_RETURN));
  return events;
}

/// SDL_MOUSEBUTTONDOWN or SDL_MOUSEBUTTONUP.
inline SDL_Event finger(Uint32 type, int x, int y) {
  SDL_Event event{};
  event.button = {.type = type, .x = x, .y = y};
  return event;
}

}  // namespace rackside::tests

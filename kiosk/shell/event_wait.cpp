#include "kiosk/shell/event_wait.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace rackside::kiosk {
namespace {

constexpr std::chrono::milliseconds longest{3'600'000};  // SDL takes an int

// SDL 2.26 has a wait of its own for these; under all others it looks every millisecond.
bool sleeps(std::string_view driver) {
  constexpr std::array sleeping{std::string_view("x11"), std::string_view("wayland")};
  return std::ranges::find(sleeping, driver) != sleeping.end();
}

bool something_waits() {
  return SDL_PeepEvents(nullptr, 0, SDL_PEEKEVENT, SDL_FIRSTEVENT, SDL_LASTEVENT) > 0;
}

}  // namespace

EventWait::EventWait()
    : wake_event_(SDL_RegisterEvents(1)), sdl_sleeps_(sleeps(SDL_GetCurrentVideoDriver())) {}

void EventWait::wake() {
  SDL_Event event{};
  event.type = wake_event_;
  SDL_PushEvent(&event);
  input_.ring();
}

void EventWait::wait(std::optional<std::chrono::milliseconds> patience) {
  if (patience) patience = std::clamp(*patience, std::chrono::milliseconds{0}, longest);
  if (sdl_sleeps_) {
    SDL_WaitEventTimeout(nullptr, patience ? static_cast<int>(patience->count()) : -1);
    return;
  }
  SDL_PumpEvents();
  if (!something_waits()) input_.wait(patience);
}

}  // namespace rackside::kiosk

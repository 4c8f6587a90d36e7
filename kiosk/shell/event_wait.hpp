#pragma once
// How the loop sleeps, and how other threads wake it.

#include <SDL.h>

#include <chrono>
#include <optional>

#include "kiosk/console/input_wait.hpp"

namespace rackside::kiosk {

class EventWait {
 public:
  /// After SDL_Init.
  EventWait();

  /// From any thread.
  void wake();
  /// Until SDL has an event, `wake` is called or `patience` has run out (none: for ever). Uses no
  /// processor meanwhile, also under drivers with which SDL itself would look again and again.
  void wait(std::optional<std::chrono::milliseconds> patience);

 private:
  std::uint32_t wake_event_;
  bool sdl_sleeps_;
  InputWait input_;
};

}  // namespace rackside::kiosk

#pragma once
// SDL, a window and a renderer: on a desktop, or full-screen on a console without one.

#include <filesystem>
#include <optional>
#include <string>

#include "core/values/result.hpp"
#include "kiosk/draw/sdl_handles.hpp"
#include "kiosk/program/options.hpp"

namespace rackside::kiosk {

/// SDL for the life of this object.
class Sdl {
 public:
  Sdl();
  ~Sdl() { SDL_Quit(); }
  Sdl(const Sdl&) = delete;
  Sdl& operator=(const Sdl&) = delete;
  [[nodiscard]] bool started() const { return started_; }

 private:
  bool started_;
};

struct Display {
  Window window;
  Renderer renderer;
};

/// Errors: NotFound when there is nothing to draw on; the sentence says what to do.
[[nodiscard]] Result<Display> open_display(const Sdl& sdl, const Options& options);

/// Why touch and scanner will not arrive on this display; empty when they will, as far as one sees.
[[nodiscard]] std::string input_trouble();

/// Where the lamps behind the panels are switched; empty under a desktop, which does that itself.
[[nodiscard]] std::filesystem::path panel_lamps();

/// Pixels to a millimetre as the display tells, for a window that fills it. A smaller window stands
/// for a whole panel of its size: none.
[[nodiscard]] std::optional<double> density_of(const Display& display, const Options& options);

}  // namespace rackside::kiosk

#include "kiosk/program/display.hpp"

#include <string_view>

#include "kiosk/console/access.hpp"
#include "kiosk/console/display_density.hpp"

namespace rackside::kiosk {
namespace {

constexpr std::string_view console = "KMSDRM";

bool on_console() {
  const char* driver = SDL_GetCurrentVideoDriver();
  return driver != nullptr && console == driver;
}

bool fills_screen(const Options& options) { return options.width == 0; }

Window open_window(const Options& options) {
  const bool whole = fills_screen(options);
  return Window(SDL_CreateWindow("Rackside", SDL_WINDOWPOS_UNDEFINED, SDL_WINDOWPOS_UNDEFINED,
                                 whole ? 1280 : options.width, whole ? 800 : options.height,
                                 whole ? SDL_WINDOW_FULLSCREEN_DESKTOP : SDL_WINDOW_RESIZABLE));
}

// SDL's software renderer draws a screen in a few milliseconds and needs 90 MB less than OpenGL
// where that is emulated, as on machines without a graphics processor. A bare console can only show
// through OpenGL. Somebody who sets SDL_RENDER_DRIVER knows better.
Renderer open_renderer(SDL_Window* window) {
  const bool chosen = SDL_GetHint(SDL_HINT_RENDER_DRIVER) != nullptr;
  if (!on_console() && !chosen) {
    Renderer software(SDL_CreateRenderer(window, -1, SDL_RENDERER_SOFTWARE));
    if (software) return software;
  }
  return Renderer(SDL_CreateRenderer(window, -1, 0));
}

}  // namespace

Sdl::Sdl() {
  // Real touch would otherwise come twice, as a finger and as a mouse.
  SDL_SetHint(SDL_HINT_TOUCH_MOUSE_EVENTS, "0");
  SDL_SetHint(SDL_HINT_MOUSE_TOUCH_EVENTS, "0");
  SDL_SetHint(SDL_HINT_FRAMEBUFFER_ACCELERATION, "0");
  // Who may end the program is decided here, not by SDL.
  SDL_SetHint(SDL_HINT_NO_SIGNAL_HANDLERS, "1");
  SDL_SetHint(SDL_HINT_QUIT_ON_LAST_WINDOW_CLOSE, "0");
  const std::string driver(console_driver());
  if (!driver.empty()) SDL_SetHint(SDL_HINT_VIDEODRIVER, driver.c_str());
  started_ = SDL_Init(SDL_INIT_VIDEO) == 0;
}

Result<Display> open_display(const Sdl& sdl, const Options& options) {
  Display display;
  if (sdl.started()) display.window = open_window(options);
  if (display.window) display.renderer = open_renderer(display.window.get());
  if (display.renderer) return display;
  const std::string sentence = console_driver().empty()
                                   ? "There is no screen to draw on. The log is untouched."
                                   : screen_advice(look_at_console());
  return failure(ErrorKind::NotFound, sentence, SDL_GetError());
}

std::string input_trouble() {
  return on_console() ? input_advice(look_at_console()) : std::string{};
}

std::filesystem::path panel_lamps() { return on_console() ? "/sys/class/backlight" : ""; }

std::optional<double> density_of(const Display& display, const Options& options) {
  if (!fills_screen(options)) return std::nullopt;
  return display_density(display.window.get());
}

}  // namespace rackside::kiosk

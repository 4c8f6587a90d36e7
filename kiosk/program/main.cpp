// rackside: the kiosk. Opens what it needs, puts it together, runs.

#include <fmt/format.h>

#include <cstdio>
#include <fstream>
#include <optional>
#include <string_view>

#include "core/clock/system_clock.hpp"
#include "core/clock/system_ids.hpp"
#include "core/store/default_path.hpp"
#include "core/store/kiosk_lock.hpp"
#include "core/store/sqlite_log.hpp"
#include "fonts/font_files.hpp"
#include "kiosk/frames/chosen_source.hpp"
#include "kiosk/frames/folder_source.hpp"
#include "kiosk/program/options.hpp"
#include "kiosk/settings/settings_file.hpp"
#include "kiosk/shell/camera_eye.hpp"
#include "kiosk/shell/effect_runner.hpp"
#include "kiosk/shell/label_press.hpp"
#include "kiosk/shell/loop.hpp"
#include "labels/printer/lp_printer.hpp"

namespace rackside::kiosk {
namespace {

int say(const Error& error) {
  fmt::print(stderr, "rackside: {}{}{}\n", error.sentence, error.where.empty() ? "" : " ",
             error.where);
  return 1;
}

// SDL for the life of this object.
struct Sdl {
  bool started;
  Sdl() {
    // Real touch would otherwise come twice, as a finger and as a mouse.
    SDL_SetHint(SDL_HINT_TOUCH_MOUSE_EVENTS, "0");
    SDL_SetHint(SDL_HINT_MOUSE_TOUCH_EVENTS, "0");
    SDL_SetHint(SDL_HINT_FRAMEBUFFER_ACCELERATION, "0");
    started = SDL_Init(SDL_INIT_VIDEO) == 0;
  }
  ~Sdl() { SDL_Quit(); }
};

Window open_window(const Options& options) {
  const bool whole = options.width == 0;
  return Window(SDL_CreateWindow("Rackside", SDL_WINDOWPOS_UNDEFINED, SDL_WINDOWPOS_UNDEFINED,
                                 whole ? 1280 : options.width, whole ? 800 : options.height,
                                 whole ? SDL_WINDOW_FULLSCREEN_DESKTOP : SDL_WINDOW_RESIZABLE));
}

// SDL's software renderer draws a screen in a few milliseconds and needs 90 MB less than OpenGL
// where that is emulated, as on machines without a graphics processor. A bare console (KMSDRM) can
// only show through OpenGL. Somebody who sets SDL_RENDER_DRIVER knows better.
Renderer open_renderer(SDL_Window* window) {
  const bool console = std::string_view(SDL_GetCurrentVideoDriver()) == "KMSDRM";
  const bool chosen = SDL_GetHint(SDL_HINT_RENDER_DRIVER) != nullptr;
  if (!console && !chosen) {
    Renderer software(SDL_CreateRenderer(window, -1, SDL_RENDERER_SOFTWARE));
    if (software) return software;
  }
  return Renderer(SDL_CreateRenderer(window, -1, 0));
}

// What the words on the command line say for this start, the file for all the rest.
Settings settings_for(const Options& options, const std::filesystem::path& file) {
  auto kept = read_settings(file);
  if (!kept) say(kept.error());
  Settings settings = kept.value_or(Settings{});
  if (options.palette) settings.palette = *options.palette;
  if (options.pixels_per_mm) settings.pixels_per_mm = options.pixels_per_mm;
  if (!options.camera.empty()) settings.camera = options.camera;
  return settings;
}

struct Logs {
  std::filesystem::path path;
  KioskLock lock;
  std::unique_ptr<LogStore> writing;
  std::unique_ptr<LogStore> reading;
};

Result<Logs> open_logs(const Options& options) {
  auto path = options.log.empty() ? default_log_path() : Result<std::filesystem::path>(options.log);
  if (!path) return tl::unexpected(path.error());
  auto lock = KioskLock::take(*path);
  if (!lock) return tl::unexpected(lock.error());
  auto writing = SqliteLog::open(*path, Access::Write);
  if (!writing) return tl::unexpected(writing.error());
  auto reading = SqliteLog::open(*path, Access::Read);
  if (!reading) return tl::unexpected(reading.error());
  return Logs{*path, std::move(*lock), std::move(*writing), std::move(*reading)};
}

// Pictures in the place of a camera; none where none are asked for.
Result<std::unique_ptr<FrameSource>> open_frames(const Options& options) {
  if (options.frames.empty()) return nullptr;
  return FolderSource::open(options.frames).map([](auto source) -> std::unique_ptr<FrameSource> {
    return source;
  });
}

int run(const Options& options) {
  auto logs = open_logs(options);
  if (!logs) return say(logs.error());
  const std::filesystem::path settings_file = settings_path(logs->path);
  const Settings settings = settings_for(options, settings_file);
  auto frames = open_frames(options);
  if (!frames) return say(frames.error());
  const Sdl sdl;
  const Window window = sdl.started ? open_window(options) : nullptr;
  const Renderer renderer = window ? open_renderer(window.get()) : nullptr;
  if (!renderer)
    return say({ErrorKind::Broken, "There is no screen to draw on. The log is untouched.",
                SDL_GetError()});
  auto fonts = FontBook::open(running_program());
  if (!fonts) return say(fonts.error());
  SystemClock clock;
  SystemIds ids(clock);
  IntentQueue results(wake_loop);
  std::ofstream told(options.tell_to, std::ios::app);
  const auto tell = [&](const Notice& notice) {
    if (told) told << notice.sentence << std::endl;
  };
  CameraEye eye(results, source_at);
  Loop* running = nullptr;
  SystemIds written_ids(clock);
  LabelPress press(logs->path, std::make_unique<LpPrinter>());
  const auto print = [&](const std::vector<LabelContent>& contents, const Settings& as_set_up) {
    return press.print(contents, as_set_up, clock.now());
  };
  EffectRunner runner({std::move(logs->writing), std::move(logs->reading), clock, written_ids,
                       results, eye,
                       [&](const Settings& kept) { return write_settings(settings_file, kept); },
                       print, [&] { return press.choices(); }, [&] { running->stop(); }});
  Loop loop({window.get(), renderer.get(), **fonts, clock, ids, results,
             [&](const Effect& effect) { runner.run(effect); },
             [&] { return eye.newest_picture(); }, tell});
  running = &loop;
  if (*frames)
    eye.look_through(std::move(*frames), settings);
  else
    eye.follow(settings);
  loop.run(options.by, settings);
  return 0;
}

}  // namespace
}  // namespace rackside::kiosk

int main(int count, char** words) {
  const auto options = rackside::kiosk::read_options(count, words);
  if (const int* code = std::get_if<int>(&options)) return *code;
  return rackside::kiosk::run(std::get<rackside::kiosk::Options>(options));
}

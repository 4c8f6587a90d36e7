// rackside: the kiosk. Opens what it needs, puts it together, runs.

#include <fmt/format.h>

#include <cstdio>
#include <fstream>
#include <optional>

#include "core/clock/system_clock.hpp"
#include "core/clock/system_ids.hpp"
#include "core/pin_file/pin_file.hpp"
#include "core/store/default_path.hpp"
#include "core/store/kiosk_lock.hpp"
#include "core/store/sqlite_log.hpp"
#include "fonts/font_files.hpp"
#include "kiosk/frames/chosen_source.hpp"
#include "kiosk/frames/folder_source.hpp"
#include "kiosk/program/display.hpp"
#include "kiosk/program/options.hpp"
#include "kiosk/service/end_signals.hpp"
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

// For what must not depend on a clock that can be set.
Uptime uptime() {
  return std::chrono::duration_cast<Uptime>(std::chrono::steady_clock::now().time_since_epoch());
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

// Ends the loop from another thread; the loop is told as by any other event.
void ask_to_end(EventWait& sleep) {
  SDL_Event quit{};
  quit.type = SDL_QUIT;
  SDL_PushEvent(&quit);
  sleep.wake();
}

// Said on the screen and to whoever reads the service's journal.
void tell_of_input(IntentQueue& results) {
  const std::string trouble = input_trouble();
  if (trouble.empty()) return;
  say({ErrorKind::NotFound, trouble, {}});
  results.post(ReaderSays{trouble});
}

int run(const Options& options) {
  auto logs = open_logs(options);
  if (!logs) return say(logs.error());
  const std::filesystem::path settings_file = settings_path(logs->path);
  const Settings settings = settings_for(options, settings_file);
  auto frames = open_frames(options);
  if (!frames) return say(frames.error());
  const Sdl sdl;
  const auto display = open_display(sdl, options);
  if (!display) return say(display.error());
  auto fonts = FontBook::open(running_program());
  if (!fonts) return say(fonts.error());
  SystemClock clock;
  SystemIds ids(clock);
  EventWait sleep;
  const EndSignals signals([&] { ask_to_end(sleep); });
  IntentQueue results([&] { sleep.wake(); });
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
  EffectRunner* answering = nullptr;
  Pulse pulse(service_wish(), [&] {
    answering->ask([&] {
      pulse.answer();
      sleep.wake();
    });
  });
  EffectRunner runner(
      {std::move(logs->writing), std::move(logs->reading), clock, written_ids, results, eye,
       [&](const Settings& kept) { return write_settings(settings_file, kept); }, print,
       [&] { return press.choices(); }, std::make_unique<PinFile>(pin_path(logs->path), uptime),
       [&] { running->stop(); }});
  answering = &runner;
  Loop loop({display->window.get(), display->renderer.get(), **fonts, sleep, pulse, clock, ids,
             results, [&](const Effect& effect) { runner.run(effect); },
             [&] { return eye.newest_picture(); }, tell,
             [&] { return density_of(*display, options); },
             options.closable || options.width != 0 ? Closing::Ends : Closing::Asks});
  running = &loop;
  if (*frames)
    eye.look_through(std::move(*frames), settings);
  else
    eye.follow(settings);
  tell_of_input(results);
  loop.run(options.by, settings);
  pulse.stopping();
  return 0;
}

}  // namespace
}  // namespace rackside::kiosk

int main(int count, char** words) {
  const auto options = rackside::kiosk::read_options(count, words);
  if (const int* code = std::get_if<int>(&options)) return *code;
  return rackside::kiosk::run(std::get<rackside::kiosk::Options>(options));
}

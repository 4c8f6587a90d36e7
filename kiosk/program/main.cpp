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
#include "core/store/pictures.hpp"
#include "core/store/sqlite_log.hpp"
#include "fonts/font_files.hpp"
#include "kiosk/console/backlight.hpp"
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
#include "kiosk/shell/picture_folder.hpp"
#include "kiosk/shell/record_files.hpp"
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

// Whatever can be missing, so that nothing starts before all of it is there.
struct Opened {
  Logs logs;
  std::unique_ptr<FrameSource> frames;  // none: the camera that is set up
  std::unique_ptr<FontBook> fonts;
  Display display;
};

Result<Opened> open(const Options& options, const Sdl& sdl) {
  auto logs = open_logs(options);
  if (!logs) return tl::unexpected(logs.error());
  auto frames = open_frames(options);
  if (!frames) return tl::unexpected(frames.error());
  auto display = open_display(sdl, options);
  if (!display) return tl::unexpected(display.error());
  auto fonts = FontBook::open(running_program());
  if (!fonts) return tl::unexpected(fonts.error());
  return Opened{std::move(*logs), std::move(*frames), std::move(*fonts), std::move(*display)};
}

// Everything put together. The members stand in the order in which they need each other.
class Kiosk {
 public:
  Kiosk(const Options& options, Opened opened)
      : options_(options),
        display_(std::move(opened.display)),
        fonts_(std::move(opened.fonts)),
        settings_file_(settings_path(opened.logs.path)),
        settings_(settings_for(options, settings_file_)),
        frames_(std::move(opened.frames)),
        lock_(std::move(opened.logs.lock)),
        told_(options.tell_to, std::ios::app),
        press_(opened.logs.path, std::make_unique<LpPrinter>()),
        runner_(runner_needs(std::move(opened.logs))),
        loop_(loop_needs()) {}

  void run() {
    if (frames_)
      eye_.look_through(std::move(frames_), settings_);
    else
      eye_.follow(settings_);
    tell_of_input(results_);
    loop_.run(options_.by, settings_);
    pulse_.stopping();
  }

 private:
  EffectRunner::Needs runner_needs(Logs logs) {
    return {std::move(logs.writing),
            std::move(logs.reading),
            clock_,
            written_ids_,
            results_,
            eye_,
            [this](const Settings& kept) { return write_settings(settings_file_, kept); },
            [this](const std::vector<LabelContent>& contents, const Settings& as_set_up) {
              return press_.print(contents, as_set_up, clock_.now());
            },
            [this](const CoverReading& reading, const Settings& as_set_up) {
              return press_.print_handover(reading, as_set_up, clock_.now());
            },
            [this](const ReturnReport& report, const Settings& as_set_up) {
              return press_.print_return(report, as_set_up, clock_.now());
            },
            [this] { return press_.choices(); },
            [folder = pictures_beside(logs.path)](const EventId& event, const GreyImage& picture) {
              return keep_picture(folder, event, picture);
            },
            std::make_unique<PinFile>(pin_path(logs.path), uptime),
            [this] { loop_.stop(); },
            [files = RecordFiles(logs.path)] { return files.find(); },
            std::make_unique<SystemIds>(clock_)};
  }

  Loop::Needs loop_needs() {
    const bool window = options_.closable || options_.width != 0;
    return {.window = display_.window.get(),
            .renderer = display_.renderer.get(),
            .fonts = *fonts_,
            .sleep = sleep_,
            .pulse = pulse_,
            .clock = clock_,
            .ids = ids_,
            .results = results_,
            .run_effect = [this](const Effect& effect) { runner_.run(effect); },
            .newest_picture = [this] { return eye_.newest_picture(); },
            .tell =
                [this](const Notice& notice) {
                  if (told_) told_ << notice.sentence << std::endl;
                },
            .density = [this] { return density_of(display_, options_); },
            .closing = window ? Closing::Ends : Closing::Asks,
            .light = [this](bool on) { lamp_.lit(on); }};
  }

  // The writing thread's answer to whether it is alive.
  void ask_for_life() {
    runner_.ask([this] {
      pulse_.answer();
      sleep_.wake();
    });
  }

  Options options_;
  Display display_;
  std::unique_ptr<FontBook> fonts_;
  std::filesystem::path settings_file_;
  Settings settings_;
  std::unique_ptr<FrameSource> frames_;
  KioskLock lock_;
  std::ofstream told_;
  SystemClock clock_;
  SystemIds ids_{clock_};
  SystemIds written_ids_{clock_};
  EventWait sleep_;
  EndSignals signals_{[this] { ask_to_end(sleep_); }};
  IntentQueue results_{[this] { sleep_.wake(); }};
  CameraEye eye_{results_, source_at};
  LabelPress press_;
  Pulse pulse_{service_wish(), [this] { ask_for_life(); }};
  Backlight lamp_{panel_lamps()};
  EffectRunner runner_;
  Loop loop_;
};

int run(const Options& options) {
  const Sdl sdl;
  auto opened = open(options, sdl);
  if (!opened) return say(opened.error());
  Kiosk(options, std::move(*opened)).run();
  return 0;
}

}  // namespace
}  // namespace rackside::kiosk

int main(int count, char** words) {
  const auto options = rackside::kiosk::read_options(count, words);
  if (const int* code = std::get_if<int>(&options)) return *code;
  return rackside::kiosk::run(std::get<rackside::kiosk::Options>(options));
}

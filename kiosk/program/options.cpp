#include "kiosk/program/options.hpp"

#include <cstdio>

#include "core/options/options.hpp"

namespace rackside::kiosk {
namespace {

// "1280x800"
std::string read_size(const std::string& text, Options& options) {
  int end = 0;
  const bool read =
      std::sscanf(text.c_str(), "%dx%d%n", &options.width, &options.height, &end) == 2 &&
      end == static_cast<int>(text.size());
  if (!read || options.width < 320 || options.height < 320)
    return "a window is given as WIDTHxHEIGHT in pixels, at least 320x320, not \"" + text + "\"";
  return {};
}

}  // namespace

std::variant<Options, int> read_options(int count, char** words) {
  Options options;
  CommandLine app{
      "Rackside: scan a tub, see its animal and what to do now, tap what you saw.\n"
      "Without --window it takes the whole screen.",
      "rackside"};
  app.option("--log", options.log,
             "the log file (default: rackside/log.db in the XDG data folder)");
  std::string window;
  app.option("--window", window, "a window of WIDTHxHEIGHT pixels in place of the whole screen")
      .checked_by([&](const std::string& text) { return read_size(text, options); });
  app.flag("--closable", options.closable,
           "let Alt+F4 and Ctrl+Q end it, as they end a window; without this a kiosk that fills "
           "its screen asks for the keeper's PIN first (SIGTERM ends it always)");
  const auto frames =
      app.option("--frames", options.frames,
                 "read codes from the PNG and PGM pictures that appear in this folder");
  app.option("--camera", options.camera,
             "read codes through this camera, best by its stable path under /dev/v4l/by-id")
      .excludes(frames);
  app.option("--tell-to", options.tell_to,
             "also write every sentence the kiosk tells to this file or pipe, a line each, "
             "so that a speech program can say it");
  app.option("--by", options.by, "who is at the kiosk").shows_default();
  app.option("--density", options.pixels_per_mm,
             "pixels to a millimetre of the panel, for this start (default: as set up)")
      .within(least_density, most_density);
  std::optional<int> palette;
  app.option("--palette", palette, "day, dusk or night, for this start")
      .value_name("ENUM")
      .stands_for({{"day", static_cast<int>(PaletteName::Day)},
                   {"dusk", static_cast<int>(PaletteName::Dusk)},
                   {"night", static_cast<int>(PaletteName::Night)}});
  if (const auto end = app.read(count, words)) return *end;
  if (palette) options.palette = static_cast<PaletteName>(*palette);
  return options;
}

}  // namespace rackside::kiosk

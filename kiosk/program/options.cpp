#include "kiosk/program/options.hpp"

#include <CLI/CLI.hpp>
#include <cstdio>
#include <map>

namespace rackside::kiosk {
namespace {

constexpr int wrong_words = 2;

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
  CLI::App app{
      "Rackside: scan a tub, see its animal and what to do now, tap what you saw.\n"
      "Without --window it takes the whole screen.",
      "rackside"};
  app.add_option("--log", options.log,
                 "the log file (default: rackside/log.db in the XDG data folder)");
  std::string window;
  app.add_option("--window", window, "a window of WIDTHxHEIGHT pixels in place of the whole screen")
      ->check(CLI::Validator([&](std::string& text) { return read_size(text, options); }, ""));
  app.add_flag(
      "--closable", options.closable,
      "let Alt+F4 and Ctrl+Q end it, as they end a window; without this a kiosk that fills "
      "its screen asks for the keeper's PIN first (SIGTERM ends it always)");
  app.add_option("--frames", options.frames,
                 "read codes from the PNG and PGM pictures that appear in this folder");
  app.add_option("--camera", options.camera,
                 "read codes through this camera, best by its stable path under /dev/v4l/by-id")
      ->excludes("--frames");
  app.add_option("--tell-to", options.tell_to,
                 "also write every sentence the kiosk tells to this file or pipe, a line each, "
                 "so that a speech program can say it");
  app.add_option("--by", options.by, "who is at the kiosk")->capture_default_str();
  app.add_option("--density", options.pixels_per_mm,
                 "pixels to a millimetre of the panel, for this start (default: as set up)")
      ->check(CLI::Range(least_density, most_density));
  const std::map<std::string, PaletteName> palettes{
      {"day", PaletteName::Day}, {"dusk", PaletteName::Dusk}, {"night", PaletteName::Night}};
  app.add_option("--palette", options.palette, "day, dusk or night, for this start")
      ->transform(CLI::CheckedTransformer(palettes));
  try {
    app.parse(count, words);
  } catch (const CLI::ParseError& error) {
    return app.exit(error) == 0 ? 0 : wrong_words;
  }
  return options;
}

}  // namespace rackside::kiosk

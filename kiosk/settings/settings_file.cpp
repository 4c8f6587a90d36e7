#include "kiosk/settings/settings_file.hpp"

#include <fmt/format.h>
#include <toml++/toml.h>

#include <algorithm>
#include <array>
#include <fstream>
#include <span>
#include <sstream>
#include <type_traits>
#include <utility>

#include "core/file/save_file.hpp"

namespace rackside::kiosk {
namespace {

constexpr double least_aim = 0.1;  // less of the picture than this holds no label
constexpr int least_dpi = 150;
constexpr int most_dpi = 2400;
constexpr int most_minutes = 24 * 60;

template <class Value>
using Word = std::pair<std::string_view, Value>;
template <class Value>
using Words = std::span<const Word<Value>>;

constexpr std::array palette_words{Word<PaletteName>{"day", PaletteName::Day},
                                   Word<PaletteName>{"dusk", PaletteName::Dusk},
                                   Word<PaletteName>{"night", PaletteName::Night}};
constexpr std::array motion_words{Word<Motion>{"shown", Motion::Shown},
                                  Word<Motion>{"off", Motion::Off}};

template <class Value>
void take_word(const toml::table& file, std::string_view key,
               Words<std::type_identity_t<Value>> words, Value& value) {
  const auto word = file[key].value<std::string>();
  for (const auto& [name, meant] : words)
    if (word == name) value = meant;
}

template <class Value>
std::string_view word_of(Words<std::type_identity_t<Value>> words, Value value) {
  for (const auto& [name, meant] : words)
    if (meant == value) return name;
  return {};
}

void take_share(const toml::table& aim, std::string_view key, double least, double& share) {
  if (const auto value = aim[key].value<double>(); value && *value >= least && *value <= 1)
    share = *value;
}

Aim read_aim(const toml::table& table) {
  Aim aim;
  take_share(table, "x", 0, aim.x);
  take_share(table, "y", 0, aim.y);
  take_share(table, "side", least_aim, aim.side);
  return aim;
}

Settings settings_of(const toml::table& file) {
  Settings settings;
  take_word(file, "palette", palette_words, settings.palette);
  take_word(file, "motion", motion_words, settings.motion);
  if (const auto dates = date_style_of(file["dates"].value_or(std::string{})))
    settings.wording.dates = *dates;
  if (const auto unit = length_unit_of(file["lengths"].value_or(std::string{})))
    settings.wording.units.length = *unit;
  if (const auto unit = temperature_unit_of(file["temperatures"].value_or(std::string{})))
    settings.wording.units.temperature = *unit;
  const auto density = file["pixels_per_mm"].value<double>();
  if (density && *density >= least_density && *density <= most_density)
    settings.pixels_per_mm = density;
  const auto minutes = file["blank_after_minutes"].value<int>();
  if (minutes && *minutes >= 0 && *minutes <= most_minutes)
    settings.blank_after = std::chrono::minutes{*minutes};
  settings.camera = file["camera"].value_or(std::string{});
  settings.printer = file["printer"].value_or(std::string{});
  settings.label_sheet = file["label_sheet"].value_or(settings.label_sheet);
  const auto dpi = file["printer_dpi"].value<int>();
  if (dpi && *dpi >= least_dpi && *dpi <= most_dpi) settings.printer_dpi = *dpi;
  if (const auto* aim = file["aim"].as_table()) settings.aim = read_aim(*aim);
  return settings;
}

toml::table table_of(const Settings& settings) {
  toml::table file{
      {"palette", word_of(palette_words, settings.palette)},
      {"motion", word_of(motion_words, settings.motion)},
      {"dates", date_style_name(settings.wording.dates)},
      {"lengths", unit_word(settings.wording.units.length)},
      {"temperatures", unit_word(settings.wording.units.temperature)},
      {"blank_after_minutes", static_cast<std::int64_t>(settings.blank_after.count())},
      {"camera", settings.camera},
      {"printer", settings.printer},
      {"printer_dpi", settings.printer_dpi},
      {"label_sheet", settings.label_sheet},
      {"aim",
       toml::table{{"x", settings.aim.x}, {"y", settings.aim.y}, {"side", settings.aim.side}}}};
  if (settings.pixels_per_mm) file.insert("pixels_per_mm", *settings.pixels_per_mm);
  return file;
}

}  // namespace

std::filesystem::path settings_path(const std::filesystem::path& log) {
  std::filesystem::path path = log;
  return path.replace_extension(".settings.toml");
}

Result<Settings> read_settings(const std::filesystem::path& path) {
  std::ifstream file(path);
  if (!file) return Settings{};
  try {
    return settings_of(toml::parse(file, path.string()));
  } catch (const toml::parse_error& problem) {
    return failure(
        ErrorKind::BadInput,
        fmt::format("The settings in \"{}\" cannot be read (line {}: {}). The usual ones "
                    "are in use; the log is untouched.",
                    path.string(), problem.source().begin.line, problem.description()),
        path.string());
  }
}

Result<void> write_settings(const std::filesystem::path& path, const Settings& settings) {
  std::ostringstream text;
  text << "# How this kiosk is set up. It writes this file; it may also be edited by hand.\n"
       << table_of(settings) << '\n';
  return save_file(path.string(), text.str());
}

}  // namespace rackside::kiosk

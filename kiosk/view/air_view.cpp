#include "kiosk/view/air_view.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "core/climate/dew_point.hpp"
#include "core/words/sentences.hpp"
#include "kiosk/view/map_view.hpp"

namespace rackside::kiosk {
namespace {

struct Range {
  double low = 0;
  double high = 1;
  [[nodiscard]] double share(double value) const {
    return std::clamp((value - low) / (high - low), 0.0, 1.0);
  }
};

// The lines of all racks share their ranges, so that one sees which rack is the cold one.
constexpr Range degrees{10, 35};
constexpr Range percent{20, 100};

std::string age_words(const Moment& read, const Moment& now) {
  const double hours = 24 * days_between(read.utc, now.utc);
  if (hours < 1) return "just now";
  if (hours < 48) return count_of(static_cast<std::int64_t>(hours), "hour") + " ago";
  return count_of(static_cast<std::int64_t>(hours / 24), "day") + " ago";
}

AirLine line_of(const std::vector<AirPoint>* points, Range range, double wanted,
                const Moment& now) {
  AirLine line{.points = {}, .wanted = range.share(wanted)};
  if (points == nullptr) return line;
  const double week = static_cast<double>(air_days_shown.count());
  for (const AirPoint& point : *points) {
    const double x = 1 - days_between(point.when.moment.utc, now.utc) / week;
    if (x >= 0 && x <= 1) line.points.emplace_back(x, range.share(point.value));
  }
  return line;
}

bool is_good(const When& when, const CareRules& rules, const Moment& now) {
  const double age = days_between(when.moment.utc, now.utc);
  return age >= 0 && age <= rules.reading_good_for;
}

// How many animals of each rack are near a moult: dry air matters to them.
std::map<std::string, int> near_moult(const Model& model) {
  std::map<std::string, int> near;
  for (const auto& [id, forecast] : model.forecasts) {
    const AnimalState* animal = model.collection.animal(id);
    if (animal == nullptr || animal->life != Life::Living || !animal->enclosure) continue;
    const EnclosureState* tub = model.collection.enclosure(*animal->enclosure);
    if (tub == nullptr || forecast.p_premoult <= model.rules.collection.withhold_above) continue;
    ++near[tub->place.rack];
    if (!tub->place.rack.empty()) ++near[""];
  }
  return near;
}

std::string off_words(const RackClimate& air, const CareRules& rules, int near, const Moment& now) {
  std::string words;
  const auto say = [&](std::string sentence) { words += (words.empty() ? "" : " ") + sentence; };
  if (air.temperature && !is_good(air.temperature->when, rules, now)) say("Read the temperature.");
  if (air.temperature && is_good(air.temperature->when, rules, now) &&
      air.temperature->value.value < rules.cold_below)
    say("Too cold.");
  if (air.humidity && !is_good(air.humidity->when, rules, now)) say("Read the humidity.");
  if (air.humidity && is_good(air.humidity->when, rules, now) &&
      air.humidity->value.value < rules.dry_below && near > 0)
    say(fmt::format("Too dry: {} near.", count_of(near, "moult")));
  return words;
}

template <class Reading, class Words>
AirValue value_of(const std::optional<Reading>& reading, const Words& words, const Moment& now) {
  if (!reading) return {.reading = "not read", .age = {}, .wanted = {}};
  return {.reading = words(reading->value),
          .age = age_words(reading->when.moment, now),
          .wanted = {},
          .known = true};
}

AirRow row_of(const Model& model, const std::string& rack, int near) {
  const CareRules& rules = model.rules.collection;
  const Units units = rules.wording.units;
  const auto own = model.air.racks.find(rack);
  const AirSeries* series = own == model.air.racks.end() ? nullptr : &own->second;
  const auto last = model.climate.racks.find(rack);
  const RackClimate air = last == model.climate.racks.end() ? RackClimate{} : last->second;
  AirRow row{.title = rack.empty() ? "the room" : rack_title(rack)};
  row.temperature = value_of(
      air.temperature, [&](Celsius value) { return exact_temperature_words(value, units); },
      model.now);
  row.humidity = value_of(
      air.humidity, [](Percent value) { return fmt::format("{:.0f} %", value.value); }, model.now);
  row.temperature.wanted = temperature_words({rules.cold_below}, units) + " or more";
  row.humidity.wanted = fmt::format("{:.0f} % or more", rules.dry_below);
  row.temperature.line =
      line_of(series ? &series->temperature : nullptr, degrees, rules.cold_below, model.now);
  row.humidity.line =
      line_of(series ? &series->humidity : nullptr, percent, rules.dry_below, model.now);
  row.temperature.question = {.what = NumberOf::Temperature, .rack = rack};
  row.humidity.question = {.what = NumberOf::Humidity, .rack = rack};
  if (air.temperature && air.humidity)
    if (const auto dew = dew_point(air.temperature->value, air.humidity->value))
      row.dew = "dew point " + temperature_words(*dew, units);
  row.off = off_words(air, rules, near, model.now);
  return row;
}

}  // namespace

std::vector<AirRow> view_air(const Model& model) {
  std::vector<std::string> racks{""};
  for (const std::string& rack : racks_in(model.collection))
    if (!rack.empty()) racks.push_back(rack);
  for (const auto& [rack, series] : model.air.racks)
    if (std::ranges::find(racks, rack) == racks.end()) racks.push_back(rack);
  const auto near = near_moult(model);
  std::vector<AirRow> rows;
  for (const std::string& rack : racks) {
    const auto found = near.find(rack);
    rows.push_back(row_of(model, rack, found == near.end() ? 0 : found->second));
  }
  return rows;
}

}  // namespace rackside::kiosk

#include "core/forecast/surroundings.hpp"

#include <cmath>

#include "core/forecast/evidence.hpp"

namespace rackside {

void WeeklyMeans::add(double day, double celsius) {
  Sum& sum = sums_[std::lround(std::floor(day / 7))];
  sum.total += celsius;
  ++sum.readings;
}

std::vector<WeekOfWarmth> WeeklyMeans::weeks() const {
  std::vector<WeekOfWarmth> weeks;
  weeks.reserve(sums_.size());
  for (const auto& [week, sum] : sums_)
    weeks.push_back({static_cast<float>(week * 7), static_cast<float>(sum.total / sum.readings)});
  return weeks;
}

const std::vector<WeekOfWarmth>* Surroundings::around(const std::optional<Code>& enclosure) const {
  const auto rack = enclosure ? rack_of.find(*enclosure) : rack_of.end();
  auto found = rack == rack_of.end() ? racks.end() : racks.find(rack->second);
  if (found == racks.end()) found = racks.find("");
  return found == racks.end() ? nullptr : &found->second;
}

Surroundings gather_surroundings(std::vector<Event> events, Instant as_of) {
  std::erase_if(events, [&](const Event& event) { return event.when.moment.utc > as_of; });
  Surroundings result;
  std::map<std::string, WeeklyMeans> readings;
  for (const Event& event : standing(std::move(events))) {
    if (event.animal) continue;
    if (const auto* added = std::get_if<EnclosureAdded>(&event.details); added && event.enclosure)
      result.rack_of[*event.enclosure] = added->place.rack;
    if (const auto* moved = std::get_if<EnclosureMoved>(&event.details); moved && event.enclosure)
      result.rack_of[*event.enclosure] = moved->place.rack;
    if (const auto* read = std::get_if<TemperatureRead>(&event.details))
      if (is_room_temperature(read->temperature))
        readings[read->rack].add(wall_day(event.when.moment), read->temperature.value);
  }
  for (const auto& [rack, weeks] : readings) result.racks[rack] = weeks.weeks();
  return result;
}

bool is_room_temperature(Celsius temperature) {
  return temperature.value > -10 && temperature.value < 60;
}

}  // namespace rackside

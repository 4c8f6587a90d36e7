#include "core/climate/warm_days.hpp"

#include <ranges>

namespace rackside {
namespace {

Celsius mean_of(const WarmDays::Readings& readings) {
  double sum = 0;
  for (const Celsius& read : std::views::values(readings)) sum += read.value;
  return Celsius{sum / static_cast<double>(readings.size())};
}

}  // namespace

std::vector<WarmDay> WarmDays::at(std::string_view rack, Day since) const {
  std::map<Day, const Readings*> days;
  // The first of two entries stays: the rack's own.
  for (const std::string_view place : {rack, std::string_view{}})
    if (const auto found = racks.find(place); found != racks.end())
      for (auto day = found->second.lower_bound(since); day != found->second.end(); ++day)
        days.emplace(day->first, &day->second);
  std::vector<WarmDay> list;
  for (const auto& [day, read] : days) list.push_back({day, mean_of(*read)});
  return list;
}

void apply(WarmDays& days, const Event& event) {
  const auto* read = std::get_if<TemperatureRead>(&event.details);
  if (event.animal || !read) return;
  days.racks[read->rack][event.when.moment.day()].emplace(event.id, read->temperature);
}

void forget(WarmDays& days, const EventId& event) {
  for (auto& by_day : std::views::values(days.racks)) {
    for (WarmDays::Readings& day : std::views::values(by_day)) day.erase(event);
    std::erase_if(by_day, [](const auto& day) { return day.second.empty(); });
  }
}

}  // namespace rackside

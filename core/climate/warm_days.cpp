#include "core/climate/warm_days.hpp"

namespace rackside {

std::vector<WarmDay> WarmDays::at(std::string_view rack, Day since) const {
  std::map<Day, Readings> days;
  // The first of two entries stays: the rack's own.
  for (const std::string_view place : {rack, std::string_view{}})
    if (const auto found = racks.find(place); found != racks.end())
      days.insert(found->second.lower_bound(since), found->second.end());
  std::vector<WarmDay> list;
  for (const auto& [day, read] : days) list.push_back({day, Celsius{read.sum / read.count}});
  return list;
}

void apply(WarmDays& days, const Event& event) {
  const auto* read = std::get_if<TemperatureRead>(&event.details);
  if (event.animal || !read) return;
  WarmDays::Readings& day = days.racks[read->rack][event.when.moment.day()];
  day.sum += read->temperature.value;
  ++day.count;
}

}  // namespace rackside

#include "core/round/day_plan.hpp"

#include <algorithm>

#include "core/collection/place.hpp"
#include "core/round/rack_notes.hpp"

namespace rackside {
namespace {

Place place_of(const Collection& collection, const AnimalState& animal) {
  if (!animal.enclosure) return {};
  const EnclosureState* tub = collection.enclosure(*animal.enclosure);
  return tub ? tub->place : Place{};
}

std::vector<TubTask>& list_for(DayPlan& plan, Urgency urgency) {
  switch (urgency) {
    case Urgency::Due: return plan.due;
    case Urgency::Wait: return plan.wait;
    case Urgency::LeaveAlone: return plan.leave_alone;
  }
  return plan.due;
}

}  // namespace

bool comes_before(const TubTask& a, const TubTask& b) {
  if (walks_before(a.place, b.place)) return true;
  if (walks_before(b.place, a.place)) return false;
  if (a.enclosure != b.enclosure) return a.enclosure < b.enclosure;
  return a.animal < b.animal;
}

DayPlan plan_day(const Collection& collection, const std::map<AnimalId, Forecast>& forecasts,
                 const RuleBook& rules, const RoomClimate& climate, Moment now,
                 std::string_view rack) {
  DayPlan plan{.made = now};
  for (const auto& [id, animal] : collection.animals) {
    if (animal.life != Life::Living) continue;
    const Place place = place_of(collection, animal);
    if (!rack.empty() && place.rack != rack) continue;
    const auto found = forecasts.find(id);
    const Forecast* forecast = found == forecasts.end() ? nullptr : &found->second;
    const RackClimate air = climate.at(place.rack);
    const CareRules own_rules = rules.rules_for(animal);
    Instruction said = instruct(animal, forecast, own_rules, &air, now);
    auto& list = list_for(plan, said.urgency);
    list.push_back(TubTask{id, animal.enclosure, place,
                           condition_of(animal, forecast, own_rules, now),
                           state_sentence(animal, forecast, own_rules, now), std::move(said)});
  }
  for (auto* list : {&plan.due, &plan.wait, &plan.leave_alone})
    std::ranges::sort(*list, comes_before);
  plan.notes = rack_notes(collection, forecasts, rules.collection, climate, now, rack);
  return plan;
}

std::vector<ShelfPart> by_shelf(std::span<const TubTask> tubs) {
  std::vector<ShelfPart> parts;
  for (std::size_t begin = 0; begin < tubs.size();) {
    Place shelf = tubs[begin].place;
    shelf.position.clear();
    std::size_t end = begin;
    while (end < tubs.size() && tubs[end].place.rack == shelf.rack &&
           tubs[end].place.shelf == shelf.shelf)
      ++end;
    parts.push_back({shelf, tubs.subspan(begin, end - begin)});
    begin = end;
  }
  return parts;
}

}  // namespace rackside

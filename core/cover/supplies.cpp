#include "core/cover/supplies.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "core/words/sentences.hpp"

namespace rackside {
namespace {

using What = std::pair<std::string, std::optional<Millimetres>>;

// One animal's meals of one kind of prey.
struct Appetite {
  int planned = 0;
  double refused = 0;
  double spread = 0;  // standard deviations add up where all meals are refused or none
};

struct Lot {
  int planned = 0;
  double refused = 0;
  double variance = 0;
};

std::map<What, Lot> lots_of(const std::vector<CoverDay>& days) {
  std::map<std::pair<What, AnimalId>, Appetite> animals;
  for (const CoverDay& day : days)
    for (const CoverLine& line : day.visits) {
      if (!line.prey) continue;
      Appetite& meals = animals[{{line.prey->kind, line.prey->size}, line.animal}];
      const double p = line.prey->p_refused;
      meals.planned += line.prey->count;
      meals.refused += line.prey->count * p;
      meals.spread += line.prey->count * std::sqrt(p * (1 - p));
    }
  std::map<What, Lot> lots;
  for (const auto& [key, meals] : animals) {
    Lot& lot = lots[key.first];
    lot.planned += meals.planned;
    lot.refused += meals.refused;
    lot.variance += meals.spread * meals.spread;
  }
  return lots;
}

int to_get(const Lot& lot, double margin) {
  const double wanted = lot.planned - lot.refused + margin * std::sqrt(lot.variance);
  return std::min(lot.planned, static_cast<int>(std::ceil(wanted - 1e-9)));
}

DayLoad load_of(const CoverDay& day) {
  DayLoad load{.day = day.day, .visits = static_cast<int>(day.visits.size())};
  for (const CoverLine& line : day.visits) {
    if (line.prey) ++load.meals;
    if (line.water) ++load.water;
  }
  return load;
}

void count_tubs(Supplies& supplies, const CoverDay& day, const Collection& collection) {
  for (const auto* list : {&day.visits, &day.keep_closed, &day.nothing})
    for (const CoverLine& line : *list) {
      const AnimalState* animal = collection.animal(line.animal);
      ++supplies.tubs;
      if (animal && !animal->last_misted && !animal->last_watered) ++supplies.without_water;
    }
}

}  // namespace

Supplies supplies_for(const std::vector<CoverDay>& days, const Collection& collection,
                      double margin, const Wording& wording) {
  Supplies supplies{.wording = wording};
  if (days.empty()) return supplies;
  supplies.from = days.front().day;
  supplies.to = days.back().day;
  for (const auto& [what, lot] : lots_of(days))
    supplies.prey.push_back(
        {what.first, what.second, lot.planned, lot.refused, to_get(lot, margin)});
  for (const CoverDay& day : days) supplies.days.push_back(load_of(day));
  count_tubs(supplies, days.front(), collection);
  return supplies;
}

std::string format_supply(const PreySupply& prey, Units units) {
  const auto refused = static_cast<int>(std::lround(prey.expected_refused));
  const int safety = prey.get - (prey.planned - refused);
  std::string text = fmt::format(
      "Get {}: {} planned",
      format_prey({.kind = prey.kind, .count = prey.get, .size = prey.size}, units), prey.planned);
  if (refused > 0) text += fmt::format(", about {} likely to be refused", refused);
  if (safety > 0) text += fmt::format(", {} for safety", safety);
  return text + ".";
}

}  // namespace rackside

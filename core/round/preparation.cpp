#include "core/round/preparation.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/care/cautions.hpp"
#include "core/words/sentences.hpp"

namespace rackside {
namespace {

struct Lot {
  int planned = 0;
  double refused = 0;
  double variance = 0;
};

// A tub's prey is taken or refused together, so tubs are the independent trials.
void add(Lot& lot, const PreyPlan& prey) {
  lot.planned += prey.count;
  lot.refused += prey.count * prey.p_refused;
  lot.variance += prey.count * prey.count * prey.p_refused * (1 - prey.p_refused);
}

int to_bring(const Lot& lot, double margin) {
  const double wanted = lot.planned - lot.refused + margin * std::sqrt(lot.variance);
  return std::min(lot.planned, static_cast<int>(std::ceil(wanted - 1e-9)));
}

std::vector<PreyNeeded> prey_of(const DayPlan& plan, double margin) {
  std::map<std::pair<std::string, std::optional<Millimetres>>, Lot> lots;
  for (const TubTask& tub : plan.due)
    if (const auto& prey = tub.instruction.prey) add(lots[{prey->kind, prey->size}], *prey);
  std::vector<PreyNeeded> needed;
  needed.reserve(lots.size());
  for (const auto& [what, lot] : lots)
    needed.push_back({what.first, what.second, lot.planned, lot.refused, to_bring(lot, margin)});
  return needed;
}

bool includes(const Instruction& said, Task task) {
  return said.task == task || std::ranges::find(said.also, task) != said.also.end();
}

template <class Matches>
void add_line(std::vector<std::string>& lines, const DayPlan& plan, std::string_view format,
              Matches matches) {
  const auto tubs = std::ranges::count_if(plan.due, matches);
  if (tubs > 0)
    lines.push_back(fmt::format(fmt::runtime(format), count_of(static_cast<int>(tubs), "tub")));
}

}  // namespace

Preparation prepare(const DayPlan& plan, const Collection& collection, double margin) {
  Preparation ready{.prey = prey_of(plan, margin), .carry = {}, .cautions = {}};
  const auto for_task = [](Task task) {
    return [task](const TubTask& tub) { return includes(tub.instruction, task); };
  };
  add_line(ready.carry, plan, "Water and a mister: {}", [](const TubTask& tub) {
    return includes(tub.instruction, Task::MistAndCheckWater) ||
           includes(tub.instruction, Task::GiveWater);
  });
  add_line(ready.carry, plan, "Forceps and a cup for left prey: {}", [](const TubTask& tub) {
    return includes(tub.instruction, Task::TakeOutPrey) ||
           includes(tub.instruction, Task::TakePreyFromMoult);
  });
  add_line(ready.carry, plan, "Bags for sheds: {}", for_task(Task::TakeOutShed));
  add_line(ready.carry, plan, "A rule or a lens for sheds: {}", for_task(Task::MeasureFromShed));
  const auto whose = [&](bool Cautions::*danger) {
    return [&collection, danger](const TubTask& tub) {
      return cautions_for(collection.animal(tub.animal)->species).*danger;
    };
  };
  add_line(ready.cautions, plan, "Venom of medical importance: {}. Long forceps, no handling.",
           whose(&Cautions::medically_significant));
  add_line(ready.cautions, plan, "Many urticating hairs: {}. Gloves and eye protection.",
           whose(&Cautions::heavy_urticating_hairs));
  return ready;
}

std::string format_prey_needed(const PreyNeeded& prey, Units units) {
  const auto refused = static_cast<int>(std::lround(prey.expected_refused));
  const int safety = prey.bring - (prey.planned - refused);
  std::string text =
      fmt::format("Bring {}: {} planned",
                  format_prey({.kind = prey.kind, .count = prey.bring, .size = prey.size}, units),
                  prey.planned);
  if (refused > 0) text += fmt::format(", about {} likely to be refused", refused);
  if (safety > 0) text += fmt::format(", {} for safety", safety);
  return text + ".";
}

}  // namespace rackside

// What an offer is recorded with, and what there is in the place of what was planned.

#include <algorithm>
#include <charconv>

#include "core/care/meals.hpp"
#include "core/words/sentences.hpp"
#include "kiosk/model/lower_case.hpp"
#include "kiosk/model/steps.hpp"
#include "kiosk/model/trimmed.hpp"

namespace rackside::kiosk {
namespace {

// Between what a sling is fed and a rodent, which the trade also offers; beyond, a unit is wrong.
constexpr double least_prey_mm = 0.5;
constexpr double most_prey_mm = 150;

struct Answer {
  std::string kind;
  std::optional<Millimetres> size;
};

// "roach 12 mm", "roach 12", "dubia roach": the number is the last word or the one before its unit.
Answer read(std::string text, LengthUnit unit) {
  text = trimmed(lower(text));
  if (const auto space = text.find_last_of(' '); space != std::string::npos)
    if (const auto named = length_unit_of(text.substr(space + 1))) {
      unit = *named;
      text = trimmed(text.substr(0, space));
    }
  const auto space = text.find_last_of(' ');
  const std::string last = space == std::string::npos ? "" : text.substr(space + 1);
  double number = 0;
  const auto [end, problem] = std::from_chars(last.data(), last.data() + last.size(), number);
  if (last.empty() || problem != std::errc{} || end != last.data() + last.size())
    return {text, std::nullopt};
  return {trimmed(text.substr(0, space)), in_millimetres(number, unit)};
}

std::optional<Millimetres> size_there(const PreyInstead& row) {
  return row.other_size ? row.other_size : row.size;
}

// What is asked about may itself stand in for something.
void replace(std::vector<PreyInstead>& instead, const AskPrey& about, const Answer& by) {
  bool found = false;
  for (PreyInstead& row : instead) {
    if (row.other != about.kind || size_there(row) != about.size) continue;
    row.other = by.kind;
    if (by.size) row.other_size = by.size;
    found = true;
  }
  if (!found) instead.push_back({about.kind, about.size, by.kind, by.size});
  std::erase_if(instead, [](const PreyInstead& row) {
    return row.other == row.kind && size_there(row) == row.size;
  });
}

}  // namespace

std::optional<PreyPlan> prey_offered(const Model& model) {
  const auto animal = shown_animal(model);
  if (!animal || animal->life != Life::Living || !model.overview_known) return std::nullopt;
  const auto found = model.forecasts.find(animal->id);
  const Forecast* forecast = found == model.forecasts.end() ? nullptr : &found->second;
  const CareRules rules = model.rules.rules_for(*animal);
  const Instruction said = *instruction_here(model);
  if (said.prey) return said.prey;
  if (said.task != Task::NotDue && said.task != Task::Reoffer) return std::nullopt;
  return prey_for(*animal, rules, Portion::Usual, forecast == nullptr ? 0 : forecast->p_premoult);
}

std::set<std::string> prey_known(const Model& model) {
  std::set<std::string> known{"cricket", "locust", "mealworm", "roach"};
  for (const auto& [id, animal] : model.collection.animals)
    if (!animal.meal.prey.empty()) known.insert(animal.meal.prey);
  return known;
}

std::optional<std::string> offer_instead(Model& model, const AskPrey& about,
                                         const std::string& text) {
  const Answer by = read(text, model.settings.wording.units.length);
  if (by.kind.empty())
    return "Say what there is instead, with its size if that is another: roach 12 mm. Nothing was "
           "changed.";
  if (by.size && (by.size->value < least_prey_mm || by.size->value > most_prey_mm))
    return "No prey is that size. Nothing was changed: look at the number and its unit.";
  replace(model.rules.collection.instead, about, by);
  model.plan_stale = true;
  refresh_plan(model);
  return std::nullopt;
}

}  // namespace rackside::kiosk

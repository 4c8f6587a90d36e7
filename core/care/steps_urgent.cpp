#include <fmt/format.h>

#include <cmath>

#include "core/care/steps.hpp"
#include "core/words/dates.hpp"

namespace rackside {

std::optional<Instruction> prey_beside_a_moult(const Findings& f) {
  if (!f.on_its_back || !f.prey_left_days) return std::nullopt;
  return Instruction{
      .task = Task::TakePreyFromMoult,
      .urgency = Urgency::Due,
      .urgent = true,
      .sentence = "On its back with prey in the tub: take the prey out, do not touch it.",
      .why = {"A moulting animal cannot defend itself; prey bites.",
              fmt::format("Prey was left {}.", days_ago(*f.prey_left_days))},
      .next_due = f.today};
}

std::optional<Instruction> moult_takes_too_long(const Findings& f) {
  if (!f.on_its_back || f.hours_on_its_back <= f.rules.moult_takes_at_most) return std::nullopt;
  return Instruction{
      .task = Task::HelpWithMoult,
      .urgency = Urgency::Due,
      .urgent = true,
      .health_flag = true,
      .sentence = "On its back for more than a day: look closer and ask for advice.",
      .why = {fmt::format("First seen on its back {:.0f} hours ago.", f.hours_on_its_back),
              "A moult takes hours, mostly at night."},
      .next_due = f.today};
}

std::optional<Instruction> is_moulting(const Findings& f) {
  if (!f.on_its_back) return std::nullopt;
  return Instruction{
      .task = Task::LeaveAlone,
      .urgency = Urgency::LeaveAlone,
      .urgent = true,
      .sentence = "On its back: leave it entirely alone.",
      .why = {"It is moulting; lying on its back is how that begins.",
              fmt::format("Look in again within a day of {}.",
                          f.days_since(*f.animal.on_its_back_since) == 0 ? "now" : "yesterday")},
      .next_due = f.today + std::chrono::days{1}};
}

std::optional<Instruction> is_shrivelled(const Findings& f) {
  if (!f.signs.has(Sign::ShrivelledAbdomen)) return std::nullopt;
  const auto& water = f.animal.last_watered;
  const bool watered = water && water->moment.utc > f.animal.last_looked->moment.utc;
  Instruction said{.task = watered ? Task::LookCloser : Task::GiveWater,
                   .urgency = Urgency::Due,
                   .urgent = true,
                   .health_flag = true,
                   .sentence = "Shrivelled abdomen: give water now and look closer.",
                   .why = {"A shrivelled abdomen is mostly thirst, and it kills."},
                   .next_due = f.today};
  if (watered) said.sentence = "Shrivelled abdomen, water given: look whether it fills out.";
  if (!water) said.why.push_back("Water was never written down for this tub.");
  if (water && f.days_since(*water) >= f.rules.no_water_after)
    said.why.push_back(fmt::format("Water was last filled {}.", days_ago(f.days_since(*water))));
  return said;
}

std::optional<Instruction> prey_was_left(const Findings& f) {
  if (!f.prey_left_days) return std::nullopt;
  const bool check_now = f.soft || *f.prey_left_days >= f.rules.left_prey_check_after;
  if (!check_now)
    return Instruction{
        .task = Task::TakeOutPrey,
        .urgency = Urgency::Wait,
        .sentence = "Prey is in the tub: take out what is left tomorrow morning.",
        .why = {"It was left today."},
        .next_due = f.today + std::chrono::days{std::lround(f.rules.left_prey_check_after)}};
  Instruction said{.task = Task::TakeOutPrey,
                   .urgency = Urgency::Due,
                   .urgent = f.soft,
                   .overdue = *f.prey_left_days > f.rules.left_prey_check_after,
                   .sentence = "Take out the left prey.",
                   .why = {fmt::format("Prey was left {}.", days_ago(*f.prey_left_days))},
                   .next_due = f.today};
  if (f.soft) said.sentence = "Take out the left prey: it can hurt a soft animal.";
  if (f.soft) said.why.push_back("The new skin has not hardened yet.");
  if (f.water_due && !f.soft) said.also.push_back(Task::MistAndCheckWater);
  return said;
}

std::optional<Instruction> refuses_after_moult(const Findings& f) {
  const AnimalState& a = f.animal;
  if (!f.days_since_moult || f.soft || a.stage == Stage::MatureMale) return std::nullopt;
  const auto moult = a.last_moult->noticed.moment.utc;
  const bool ate = a.last_meal && a.last_meal->moment.utc > moult;
  const bool tried = a.last_offer && a.last_offer->when.moment.utc > moult;
  // What is "a fresh moult" ends somewhere: later it is a fast like any other.
  const double from = f.rules.refusing_after_moult + f.days_to_harden - f.rules.harden_for;
  const bool fresh = *f.days_since_moult >= from && *f.days_since_moult <= 4 * from;
  // A premoult that is likely again explains the fast.
  if (ate || !tried || !fresh || f.withhold) return std::nullopt;
  if (a.last_looked && f.days_since(*a.last_looked) < f.rules.ask_again_after) return std::nullopt;
  return Instruction{
      .task = Task::RefusesAfterMoult,
      .urgency = Urgency::Due,
      .urgent = true,
      .health_flag = true,
      .sentence = "Look closer: it has not eaten since its moult.",
      .why = {fmt::format("Moulted {}, and no meal since.", days_ago(*f.days_since_moult)),
              "Usually the first meal is taken within two or three weeks.",
              "Fangs or mouth may have come to harm in the moult."},
      .next_due = f.today};
}

}  // namespace rackside

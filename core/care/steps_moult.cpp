#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/care/steps.hpp"
#include "core/words/dates.hpp"
#include "core/words/sentences.hpp"

namespace rackside {
namespace {

std::chrono::days whole_days(double days) {
  return std::chrono::days{static_cast<int>(std::lround(days))};
}

std::string moulted_when(const Findings& f) {
  const int days = *f.days_since_moult;
  return f.animal.last_moult->date_known ? fmt::format("Moulted {}.", days_ago(days))
                                         : fmt::format("The shed was found {}.", days_ago(days));
}

}  // namespace

std::optional<Instruction> has_just_moulted(const Findings& f) {
  if (!f.days_since_moult || *f.days_since_moult >= f.rules.shed_rests_for) return std::nullopt;
  return Instruction{
      .task = Task::LeaveAlone,
      .urgency = Urgency::LeaveAlone,
      .sentence = "Freshly moulted: leave it entirely alone.",
      .why = {moulted_when(f), "Fangs and skin are still soft."},
      .next_due = f.animal.last_moult->noticed.moment.day() + whole_days(f.rules.shed_rests_for)};
}

std::optional<Instruction> guards_a_sac(const Findings& f) {
  if (!f.animal.guards_sac_since) return std::nullopt;
  return Instruction{
      .task = Task::LeaveAlone,
      .urgency = Urgency::LeaveAlone,
      .sentence = "She guards a sac: do not disturb her.",
      .why = {fmt::format("Laid {}.", days_ago(f.days_since(*f.animal.guards_sac_since))),
              "A disturbed female may eat her sac."}};
}

std::optional<Instruction> shed_is_in_the_tub(const Findings& f) {
  // When a meal is due too, the shed comes out in that visit.
  const bool meal_today = !f.withhold && f.meal_due <= f.today;
  if (!f.shed_waits || meal_today) return std::nullopt;
  Instruction said{.task = Task::TakeOutShed,
                   .urgency = Urgency::Due,
                   .sentence = "Take out the shed.",
                   .why = {moulted_when(f)},
                   .next_due = f.today};
  if (f.soft) said.sentence = "Take out the shed. Offer nothing yet.";
  if (f.soft)
    said.why.push_back(
        fmt::format("First meal {}.", on_day_words(f.meal_due, f.today, f.rules.wording.dates)));
  if (f.measure) said.also.push_back(Task::MeasureFromShed);
  if (mist_now(f)) said.also.push_back(Task::MistAndCheckWater);
  return said;
}

std::optional<Instruction> is_hardening(const Findings& f) {
  if (!f.soft) return std::nullopt;
  const bool by_record = f.days_since_moult && *f.days_since_moult < f.days_to_harden;
  std::vector<std::string> why{
      by_record ? moulted_when(f)
                : fmt::format("Has moulted lately: {} likely.", in_ten(f.p_hardening))};
  std::optional<Day> next;
  if (by_record) next = f.meal_due;
  if (next)
    why.push_back(fmt::format("The skin hardens for {}.", count_of(f.days_to_harden, "day")));
  if (!by_record) add_reasons(why, f, 3);
  if (mist_now(f)) return mist_only(std::move(why), next);
  return Instruction{
      .task = Task::Withhold,
      .urgency = Urgency::Wait,
      .sentence = next ? fmt::format("Offer nothing. First meal {}.",
                                     on_day_words(*next, f.today, f.rules.wording.dates))
                       : std::string("Offer nothing: the skin is still soft."),
      .why = std::move(why),
      .next_due = next};
}

}  // namespace rackside

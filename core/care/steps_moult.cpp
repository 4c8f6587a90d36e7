#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/care/steps.hpp"
#include "core/care/wording.hpp"

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

// The strongest reasons of the forecast, which are sentences already.
void add_reasons(std::vector<std::string>& why, const Findings& f, std::size_t most) {
  if (!f.forecast) return;
  for (const Reason& reason : f.forecast->why)
    if (reason.weight > 0 && why.size() < most) why.push_back(as_line(reason.text));
}

// What the record shows, for a belief that names no reasons of its own.
void add_record(std::vector<std::string>& why, const Findings& f, std::size_t most) {
  if (!f.signs.empty() && why.size() < most)
    why.push_back(fmt::format("Seen {}: {}.", days_ago(f.days_since(*f.animal.last_looked)),
                              format_signs(f.signs)));
  const int refused = f.animal.refusals_since_meal;
  if (refused > 0 && why.size() < most)
    why.push_back(fmt::format("Refused {} in a row.", count_of(refused, "meal")));
  if (f.days_since_moult && why.size() < most)
    why.push_back(fmt::format("The last moult on record was {}.", days_ago(*f.days_since_moult)));
}

std::vector<std::string> why_premoult(const Findings& f) {
  std::vector<std::string> why{
      f.forecast ? fmt::format("In premoult: {} likely.", in_ten(f.p_premoult))
                 : std::string("The record speaks for premoult; no forecast yet.")};
  if (f.dry_before_moult) why.push_back("The air is dry, and a moult is near.");
  const std::size_t said = why.size();
  add_reasons(why, f, 3);
  if (why.size() == said) add_record(why, f, 3);
  return why;
}

// Water may always be given to an animal that waits, but not in the first days of a soft skin.
bool mist_now(const Findings& f) {
  const bool very_soft = f.days_since_moult && *f.days_since_moult < f.rules.shed_rests_for;
  return (f.water_due || f.dry_before_moult) && !very_soft;
}

Instruction mist_only(std::vector<std::string> why, std::optional<Day> next) {
  return Instruction{.task = Task::MistAndCheckWater,
                     .urgency = Urgency::Due,
                     .sentence = "Mist and check the water. Offer nothing.",
                     .why = std::move(why),
                     .next_due = next};
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
  if (f.soft) said.why.push_back(fmt::format("First meal {}.", on_day_words(f.meal_due, f.today)));
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
      .sentence = next ? fmt::format("Offer nothing. First meal {}.", on_day_words(*next, f.today))
                       : std::string("Offer nothing: the skin is still soft."),
      .why = std::move(why),
      .next_due = next};
}

std::optional<Instruction> is_sluggish_alone(const Findings& f) {
  const bool alone =
      f.signs == SignSet{Sign::Sluggish} && !f.withhold && f.p_premoult <= f.rules.one_small_above;
  if (!alone || f.animal.stage == Stage::MatureMale) return std::nullopt;
  const int days = f.days_since(*f.animal.last_looked);
  Instruction said{
      .task = Task::LookCloser,
      .urgency = days > 0 ? Urgency::Due : Urgency::Wait,
      .health_flag = true,
      .sentence = "Sluggish: look again. Possible health problem.",
      .why = {fmt::format("Sluggish {}, and no other sign of premoult.", days_ago(days))},
      .next_due = f.today + std::chrono::days{days > 0 ? 0 : 1}};
  if (days == 0) said.sentence = "Sluggish with no other sign: look again tomorrow.";
  if (f.cold) said.why.push_back(fmt::format("It is cold here: {:.0f} C.", *f.temperature));
  if (f.water_due) said.also.push_back(Task::MistAndCheckWater);
  return said;
}

std::optional<Instruction> is_in_premoult(const Findings& f) {
  if (!f.withhold) return std::nullopt;
  const int look_every = static_cast<int>(std::lround(f.rules.look_in_premoult_every));
  const bool look_now = f.days_since_seen.value_or(look_every) >= look_every;
  std::vector<std::string> why = why_premoult(f);
  const Day next =
      f.today + std::chrono::days{look_now ? 0 : look_every - f.days_since_seen.value_or(0)};
  if (look_now) {
    Instruction said{.task = Task::LookForShed,
                     .urgency = Urgency::Due,
                     .sentence = "Look for a shed. Offer nothing.",
                     .why = std::move(why),
                     .next_due = next};
    if (mist_now(f)) said.also.push_back(Task::MistAndCheckWater);
    return said;
  }
  if (mist_now(f)) return mist_only(std::move(why), next);
  return Instruction{
      .task = Task::Withhold,
      .urgency = Urgency::Wait,
      .sentence = fmt::format("Offer nothing. Look for a shed {}.", on_day_words(next, f.today)),
      .why = std::move(why),
      .next_due = next};
}

std::optional<Instruction> may_have_moulted(const Findings& f) {
  if (f.p_moulted_unseen < f.rules.unseen_moult_above) return std::nullopt;
  const int look_every = static_cast<int>(std::lround(f.rules.look_in_premoult_every));
  if (f.animal.last_looked && f.days_since(*f.animal.last_looked) < look_every) return std::nullopt;
  std::vector<std::string> why{
      fmt::format("Has moulted unseen: {} likely.", in_ten(f.p_moulted_unseen))};
  if (f.forecast)
    for (const Reason& reason : f.forecast->why)
      if (why.size() < 3) why.push_back(as_line(reason.text));
  return Instruction{.task = Task::LookForShed,
                     .urgency = Urgency::Due,
                     .sentence = "Look for a shed before you offer anything.",
                     .why = std::move(why),
                     .next_due = f.today};
}

}  // namespace rackside

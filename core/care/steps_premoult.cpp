#include <fmt/format.h>

#include <cmath>

#include "core/care/steps.hpp"
#include "core/words/dates.hpp"
#include "core/words/sentences.hpp"

namespace rackside {
namespace {

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

}  // namespace

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
  if (f.cold) said.why.push_back(fmt::format("It is cold here: {}.", f.degrees()));
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
                     .overdue = f.days_since_seen.value_or(0) > look_every,
                     .sentence = "Look for a shed. Offer nothing.",
                     .why = std::move(why),
                     .next_due = next};
    if (mist_now(f)) said.also.push_back(Task::MistAndCheckWater);
    return said;
  }
  if (mist_now(f)) return mist_only(std::move(why), next);
  return Instruction{.task = Task::Withhold,
                     .urgency = Urgency::Wait,
                     .sentence = fmt::format("Offer nothing. Look for a shed {}.", f.on_day(next)),
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
      if (why.size() < 3) why.push_back(f.reason_line(reason));
  return Instruction{.task = Task::LookForShed,
                     .urgency = Urgency::Due,
                     .sentence = "Look for a shed before you offer anything.",
                     .why = std::move(why),
                     .next_due = f.today};
}

}  // namespace rackside

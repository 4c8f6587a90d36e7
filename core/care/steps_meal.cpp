#include <fmt/format.h>

#include <cmath>

#include "core/care/meals.hpp"
#include "core/care/steps.hpp"
#include "core/words/dates.hpp"
#include "core/words/sentences.hpp"

namespace rackside {
namespace {

double fast_limit(Stage stage, const CareRules& rules) {
  switch (stage) {
    case Stage::Sling: return rules.fast_question_sling;
    case Stage::Adult:
    case Stage::MatureMale: return rules.fast_question_adult;
    case Stage::Juvenile:
    case Stage::Unknown: return rules.fast_question_juvenile;
  }
  return rules.fast_question_juvenile;
}

std::string last_meal(const Findings& f) {
  if (!f.animal.last_meal) return "No meal on record yet.";
  return fmt::format("Last meal {}.", days_ago(f.days_since(*f.animal.last_meal)));
}

bool first_after_moult(const AnimalState& a) {
  if (!a.last_moult) return false;
  return !a.last_meal || a.last_meal->moment.utc < a.last_moult->noticed.moment.utc;
}

void add_appetite(std::vector<std::string>& why, const Findings& f) {
  const int refused = f.animal.refusals_since_meal;
  if (refused > 0) why.push_back(fmt::format("Refused {} since then.", count_of(refused, "meal")));
  if (f.cold && why.size() < 3)
    why.push_back(
        fmt::format("It is cold here, {:.0f} C: that alone can put it off.", *f.temperature));
  if (f.signs.has(Sign::PlumpAbdomen) && why.size() < 3)
    why.push_back("Plump abdomen: it is fed less often.");
}

std::vector<Task> along_the_way(const Findings& f) {
  std::vector<Task> also;
  if (f.shed_waits) also.push_back(Task::TakeOutShed);
  if (f.measure) also.push_back(Task::MeasureFromShed);
  if (f.water_due || f.dry_before_moult) also.push_back(Task::MistAndCheckWater);
  return also;
}

Instruction offer(const Findings& f, Portion portion, std::vector<std::string> why) {
  const bool small = portion == Portion::OneSmall;
  PreyPlan prey = prey_for(f.animal, f.rules, portion, f.p_premoult);
  return Instruction{
      .task = small ? Task::OfferOneSmall : Task::Offer,
      .urgency = Urgency::Due,
      .overdue = f.meal_due < f.today,
      .sentence = small
                      ? fmt::format("Offer {} and watch.", format_prey(prey, f.rules.wording.units))
                      : fmt::format("Offer {}.", format_prey(prey, f.rules.wording.units)),
      .why = std::move(why),
      .also = along_the_way(f),
      .prey = std::move(prey),
      .next_due = f.today};
}

}  // namespace

std::string format_prey(const PreyPlan& prey, Units units) {
  std::string count = count_of(prey.count, prey.kind);
  if (!prey.size) return count;
  return fmt::format("{} of about {}", count, about_length_words(*prey.size, units));
}

std::optional<Instruction> fasts_without_a_sign(const Findings& f) {
  const bool long_enough = f.fasting_days && *f.fasting_days >= fast_limit(f.stage, f.rules);
  if (!long_enough || f.cold || f.p_premoult > f.rules.one_small_above) return std::nullopt;
  const auto& looked = f.animal.last_looked;
  if (looked && f.days_since(*looked) < f.rules.ask_again_after) return std::nullopt;
  std::vector<std::string> why{
      fmt::format("No meal for {}, and no other sign of premoult.",
                  count_of(*f.fasting_days, "day")),
      f.temperature ? fmt::format("It is warm enough: {:.0f} C.", *f.temperature)
                    : std::string("Nobody has read the temperature lately: check it.")};
  if (f.forecast) why.push_back(fmt::format("In premoult: {} likely.", in_ten(f.p_premoult)));
  return Instruction{.task = Task::LookCloser,
                     .urgency = Urgency::Due,
                     .health_flag = true,
                     .sentence = "A long fast: look closer. Is it well?",
                     .why = std::move(why),
                     .next_due = f.today};
}

std::optional<Instruction> meal_is_due(const Findings& f) {
  if (f.withhold || f.meal_due > f.today) return std::nullopt;
  std::vector<std::string> why;
  if (first_after_moult(f.animal)) {
    why.push_back(fmt::format("First meal since its moult {}.", days_ago(*f.days_since_moult)));
    why.push_back("If it runs away or shows no interest, take the prey out.");
    return offer(f, Portion::OneSmall, std::move(why));
  }
  why.push_back(last_meal(f));
  if (f.p_premoult > f.rules.one_small_above) {
    why.push_back(fmt::format("In premoult: {} likely.", in_ten(f.p_premoult)));
    why.push_back("If it is not taken at once, take the prey out.");
    return offer(f, Portion::OneSmall, std::move(why));
  }
  add_appetite(why, f);
  return offer(f, Portion::Usual, std::move(why));
}

std::optional<Instruction> shed_is_to_be_measured(const Findings& f) {
  if (!f.measure || f.shed_waits) return std::nullopt;
  return Instruction{.task = Task::MeasureFromShed,
                     .urgency = Urgency::Due,
                     .sentence = "Measure or sex it from the shed.",
                     .why = {fmt::format("The shed was taken out {} and is still soft.",
                                         days_ago(f.days_since(*f.animal.shed_removed)))},
                     .next_due = f.today};
}

std::optional<Instruction> water_is_due(const Findings& f) {
  if (!f.water_due) return std::nullopt;
  return Instruction{.task = Task::MistAndCheckWater,
                     .urgency = Urgency::Due,
                     .overdue = *f.days_since_water > f.rules.water_every,
                     .sentence = "Mist and check the water.",
                     .why = {fmt::format("Last water {}.", days_ago(*f.days_since_water))},
                     .next_due = f.today};
}

std::optional<Instruction> waits_for_a_meal(const Findings& f) {
  const AnimalState& a = f.animal;
  const std::string when = on_day_words(f.meal_due, f.today, f.rules.wording.dates);
  const bool refused = a.last_offer && a.last_offer->outcome != Outcome::Took;
  Instruction said{.task = refused ? Task::Reoffer : Task::NotDue,
                   .urgency = Urgency::Wait,
                   .sentence = refused ? fmt::format("Try again {}.", when)
                                       : fmt::format("Nothing today. Next meal {}.", when),
                   .why = {last_meal(f)},
                   .next_due = f.meal_due};
  const bool settling = a.housed && f.days_since(*a.housed) < f.rules.settle_after_move;
  if (settling)
    said.why.push_back(fmt::format("Came into this tub {}.", days_ago(f.days_since(*a.housed))));
  add_appetite(said.why, f);
  if (said.why.size() > 3) said.why.resize(3);
  return said;
}

}  // namespace rackside

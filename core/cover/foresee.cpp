#include "core/cover/foresee.hpp"

#include <fmt/format.h>

#include "core/care/meals.hpp"
#include "core/words/dates.hpp"

namespace rackside {
namespace {

Event happened(const AnimalId& animal, Details details, const Moment& now) {
  Event event;
  event.animal = animal;
  event.when = When{now, Precision::Exact};
  event.details = std::move(details);
  return event;
}

// One animal walked through the coming days.
class Walk {
 public:
  Walk(AnimalState& animal, DateStyle dates) : animal_(animal), dates_(dates) {}

  [[nodiscard]] const std::string& only() const { return only_; }
  [[nodiscard]] bool assumed_moult() const { return assumed_moult_; }

  void follow(const Instruction& said, const Moment& now) {
    now_ = now;
    if (said.urgency == Urgency::Due || said.task == Task::LeaveAlone) follow(said.task, said);
    for (const Task task : said.also) follow(task, said);
  }

 private:
  void happens(Details details) { apply(animal_, happened(animal_.id, std::move(details), now_)); }

  void follow(Task task, const Instruction& said) {
    switch (task) {
      case Task::Offer:
      case Task::OfferOneSmall:
        happens(Offered{Outcome::Took, said.prey->kind, said.prey->count, said.prey->size});
        only_ = fmt::format("if it eats on {}", weekday_words(now_.day(), dates_));
        return;
      case Task::TakeOutPrey:
      case Task::TakePreyFromMoult:
        happens(PreyRemoved{});
        if (task == Task::TakePreyFromMoult) moults();
        return;
      case Task::TakeOutShed: happens(ShedRemoved{}); return;
      // Left to the keeper; here it must not keep coming back.
      case Task::MeasureFromShed: animal_.shed_removed.reset(); return;
      case Task::MistAndCheckWater: happens(Misted{}); return;
      case Task::GiveWater: happens(WaterFilled{}); return;
      case Task::LookForShed:
      case Task::LookCloser:
      case Task::RefusesAfterMoult:
        looks();
        only_ = fmt::format("if nothing new is seen on {}", weekday_words(now_.day(), dates_));
        return;
      case Task::HelpWithMoult: moults(); return;
      case Task::LeaveAlone:
        if (animal_.signs.has(Sign::OnItsBack)) moults();
        return;
      case Task::Reoffer:
      case Task::NotDue:
      case Task::Withhold: return;
    }
  }

  // What speaks of a moult stays; what was a question of health is taken to be settled.
  void looks() {
    SignSet signs;
    for (const Sign sign : animal_.signs.signs())
      if (sign != Sign::Sluggish && sign != Sign::ShrivelledAbdomen && sign != Sign::OnItsBack)
        signs.insert(sign);
    happens(Looked{signs});
  }

  void moults() {
    happens(Moulted{});
    assumed_moult_ = true;
    only_ = fmt::format("if its moult of {} is over", weekday_words(now_.day(), dates_));
  }

  AnimalState& animal_;
  DateStyle dates_;
  Moment now_;
  std::string only_;
  bool assumed_moult_ = false;
};

// Water is given whatever the animal did before.
bool stands_anyhow(const Instruction& said) { return said.task == Task::MistAndCheckWater; }

std::string if_it_refuses(AnimalState animal, const CareRules& rules, const Moment& now) {
  apply(animal, happened(animal.id, Offered{.outcome = Outcome::Refused}, now));
  return fmt::format("If it refuses: again on {}",
                     weekday_words(next_meal_day(animal, rules, now.day()), rules.wording.dates));
}

}  // namespace

const Forecast* Outlook::forecast(const AnimalId& animal, std::size_t day) const {
  const auto found = forecasts.find(animal);
  if (found == forecasts.end() || day >= found->second.size()) return nullptr;
  return &found->second[day];
}

std::vector<ForeseenDay> foresee(AnimalState animal, const Outlook& outlook, const CareRules& rules,
                                 const RackClimate* air) {
  std::vector<ForeseenDay> days;
  Walk walk(animal, rules.wording.dates);
  for (std::size_t i = 0; i < outlook.days.size(); ++i) {
    const Moment& now = outlook.days[i];
    const Forecast* known = outlook.forecast(animal.id, i);
    Forecast forecast = known ? *known : Forecast{};
    // The moult that was assumed is on record then, not unseen.
    if (walk.assumed_moult()) forecast.p_moulted_unseen = 0;
    Instruction said = instruct(animal, known ? &forecast : nullptr, rules, air, now);
    std::string only = stands_anyhow(said) ? std::string{} : walk.only();
    std::string otherwise = said.prey ? if_it_refuses(animal, rules, now) : std::string{};
    walk.follow(said, now);
    days.push_back({now.day(), std::move(said), std::move(only), std::move(otherwise)});
  }
  return days;
}

}  // namespace rackside

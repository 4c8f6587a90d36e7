// What must hold for any animal whatsoever.

#include <cmath>

#include "tests/core/care/scenario.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

double any_share() { return *rc::gen::inRange(0, 101) / 100.0; }

// One animal to which everything of a random log happened, short of its end.
AnimalState any_living_animal() {
  std::vector<Event> log = *any_log(40);
  std::erase_if(log, [](const Event& event) {
    return std::holds_alternative<AnimalAdded>(event.details) ||
           std::holds_alternative<Died>(event.details) ||
           std::holds_alternative<Left>(event.details);
  });
  for (Event& event : log) event.animal = animal_number(1);
  AnimalAdded added{.species = "Novogenus invented"};
  added.stage = *rc::gen::element(Stage::Unknown, Stage::Sling, Stage::Juvenile, Stage::Adult,
                                  Stage::MatureMale);
  log.push_back(make_event(1000, -24.0 * *rc::gen::inRange(0, 200), animal_number(1), added));
  return fold_animal(std::move(log)).value();
}

std::optional<Forecast> any_forecast() {
  if (*rc::gen::inRange(0, 5) == 0) return std::nullopt;
  Forecast forecast;
  forecast.p_premoult = any_share();
  forecast.p_hardening = (1 - forecast.p_premoult) * any_share();
  forecast.p_moulted_unseen = any_share();
  for (int i = *rc::gen::inRange(0, 5); i > 0; --i)
    forecast.why.push_back({"a reason", any_share() - 0.5, {}});
  return forecast;
}

struct Case {
  AnimalState animal;
  std::optional<Forecast> forecast;
  Moment now;
  Instruction said;
};

// Animals out of random logs, at moments around the end of those logs.
Case any_case() {
  const AnimalState animal = any_living_animal();
  const auto forecast = any_forecast();
  const Moment now = at_hour(*rc::gen::inRange(150, 1200)).moment;
  RackClimate air;
  if (*rc::gen::arbitrary<bool>())
    air.temperature = TemperatureReading{Celsius{15.0 + 10 * any_share()}, at_hour(190)};
  return Case{animal, forecast, now,
              instruct(animal, forecast ? &*forecast : nullptr, default_rules(), &air, now)};
}

}  // namespace

TEST_CASE("nothing is offered to an animal that hardens, lies on its back or is in premoult") {
  rc::prop("never", [] {
    const Case drawn = any_case();
    const auto& [animal, forecast, now, said] = drawn;
    const CareRules& rules = default_rules();
    RC_CLASSIFY(offers(said), "offers");
    if (!offers(said)) return;
    if (forecast) {
      RC_ASSERT(forecast->p_premoult <= rules.withhold_above);
      RC_ASSERT(forecast->p_hardening <= rules.withhold_above);
    }
    if (animal.last_moult)
      RC_ASSERT((now.day() - animal.last_moult->noticed.moment.day()).count() >= rules.harden_for);
    const bool back = animal.on_its_back_since &&
                      !(animal.last_offer &&
                        animal.last_offer->when.moment.utc > animal.on_its_back_since->moment.utc);
    RC_ASSERT(!back);
  });
}

TEST_CASE("an instruction never contradicts itself") {
  rc::prop("one task, and extras that go with it", [] {
    const Case drawn = any_case();
    const Instruction& said = drawn.said;
    RC_ASSERT(!said.sentence.empty());
    RC_ASSERT(!said.why.empty());
    RC_ASSERT(said.why.size() <= 3u);
    if (said.urgency == Urgency::LeaveAlone) RC_ASSERT(said.also.empty() && !said.prey);
    if (said.task == Task::LeaveAlone) RC_ASSERT(said.urgency == Urgency::LeaveAlone);
    const bool feeds = said.task == Task::Offer || said.task == Task::OfferOneSmall;
    RC_ASSERT(feeds == said.prey.has_value());
    for (const Task extra : said.also)
      RC_ASSERT(extra == Task::TakeOutShed || extra == Task::MeasureFromShed ||
                extra == Task::MistAndCheckWater);
    RC_ASSERT(!also(said, said.task));
    if (said.urgency == Urgency::Due && said.next_due)
      RC_ASSERT(*said.next_due <= drawn.now.day() || said.task == Task::MistAndCheckWater);
    if (said.urgency == Urgency::Wait && said.next_due) RC_ASSERT(*said.next_due > drawn.now.day());
  });
}

TEST_CASE("the state sentence is short enough to be the largest thing on the screen") {
  rc::prop("at most 40 characters", [] {
    const Case drawn = any_case();
    const auto sentence = state_sentence(drawn.animal, drawn.forecast ? &*drawn.forecast : nullptr,
                                         default_rules(), drawn.now);
    RC_ASSERT(!sentence.empty());
    RC_ASSERT(sentence.size() <= 40u);
  });
}

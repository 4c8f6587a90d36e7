#include "core/forecast/forecast.hpp"

#include <cmath>

#include "core/forecast/collection_evidence.hpp"
#include "core/forecast/collection_model.hpp"
#include "core/forecast/running.hpp"
#include "core/forecast/why.hpp"
#include "core/words/dates.hpp"
#include "tests/core/forecast/judge.hpp"
#include "tests/core/forecast/made_animal.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

void check_sane(const Forecast& told) {
  for (const double p : {told.p_premoult, told.p_hardening, told.p_moulted_unseen}) {
    RC_ASSERT(p >= 0);
    RC_ASSERT(p <= 1);
  }
  for (std::size_t i = 0; i < moult_quantiles; ++i) {
    RC_ASSERT(std::isfinite(told.next_moult[i]));
    if (i > 0) RC_ASSERT(told.next_moult[i] >= told.next_moult[i - 1]);
  }
}

}  // namespace

TEST_CASE("any log gives probabilities and quantiles in order, whatever is in it") {
  rc::prop("no log breaks a forecast", [] {
    const auto log = *any_log(80);
    const Moment as_of = at_hour(*rc::gen::inRange(0, 300)).moment;
    std::vector<Evidence> animals;
    for (int number = 0; number < 4; ++number) {
      std::vector<Event> own;
      for (const Event& event : log)
        if (event.animal == animal_number(number) ||
            std::holds_alternative<Retracted>(event.details))
          own.push_back(event);
      if (auto evidence = gather_evidence(own, as_of.utc)) animals.push_back(*evidence);
    }
    const CollectionModel model = learn(animals, wall_day(as_of));
    for (const Evidence& animal : animals) check_sane(forecast(model, animal, as_of));
  });
}

TEST_CASE("going off food late in the cycle is the strongest single sign") {
  Evidence eats = juvenile(150);
  Evidence fasts = eats;
  for (int week = 20; week > 4; --week) {
    offer(eats, now - 7 * week, Outcome::Took);
    offer(fasts, now - 7 * week, Outcome::Took);
  }
  for (int week = 4; week > 0; --week) {
    offer(eats, now - 7 * week + 3, Outcome::Took);
    offer(fasts, now - 7 * week + 3, Outcome::Refused);
  }
  Evidence sees = eats;
  look(sees, now - 1, {Sign::PlumpAbdomen});
  CHECK(premoult(fasts) > 0.5);
  CHECK(premoult(eats) < 0.4);
  CHECK(premoult(sees) > premoult(eats));
  CHECK(premoult(sees) < premoult(fasts));
}

TEST_CASE("a fast early in the cycle, without another sign, does not become certainty") {
  Evidence animal = juvenile(45);
  for (int week = 5; week > 0; --week) offer(animal, now - 7 * week + 2, Outcome::Refused);
  CHECK(premoult(animal) < 0.6);
}

TEST_CASE("sluggishness counts only together with another sign") {
  const Evidence nothing = juvenile(110);
  Evidence none = nothing, alone = nothing, both = nothing, other = nothing;
  look(none, now - 1, {});
  look(alone, now - 1, {Sign::Sluggish});
  look(other, now - 1, {Sign::PlumpAbdomen});
  look(both, now - 1, {Sign::PlumpAbdomen, Sign::Sluggish});
  CHECK(premoult(alone) == Approx(premoult(none)));
  CHECK(premoult(both) > premoult(other));
}

TEST_CASE("a shrivelled abdomen is thirst and says nothing of a moult") {
  Evidence animal = juvenile(110);
  for (int week = 4; week > 0; --week) offer(animal, now - 7 * week, Outcome::Refused);
  for (const SignSet beside : {SignSet{}, SignSet{Sign::DarkAbdomen}, SignSet{Sign::Sluggish}}) {
    Evidence full = animal, shrivelled = animal;
    for (const double ago : {5.0, 1.0}) {  // a first report of it, and one after another
      look(full, now - ago, beside);
      look(shrivelled, now - ago, beside.with({Sign::ShrivelledAbdomen}));
    }
    const Forecast without = forecast(untaught_model(), full, moment_of(now));
    Forecast with = forecast(untaught_model(), shrivelled, moment_of(now));
    CHECK(with.p_premoult == without.p_premoult);
    CHECK(with.p_moulted_unseen == without.p_moulted_unseen);
    CHECK(with.next_moult == without.next_moult);
    for (const Reason& reason : with.why)
      CHECK(reason.text.find("shrivelled") == std::string::npos);
  }
}

TEST_CASE("a dark abdomen means nothing in a species without a patch of hairs") {
  Evidence without_patch = juvenile(110);  // Haplocosmia has none
  Evidence with_patch = without_patch;
  with_patch.species = "Tliltocatl epicureanus";
  const double plain_before = premoult(without_patch);
  const double patch_before = premoult(with_patch);
  look(without_patch, now - 1, {Sign::DarkAbdomen});
  look(with_patch, now - 1, {Sign::DarkAbdomen});
  CHECK(premoult(without_patch) < plain_before + 0.01);
  CHECK(premoult(with_patch) > patch_before + 0.2);
}

TEST_CASE("eating again in bright colours after weeks of hiding speaks for a moult nobody saw") {
  Evidence animal = juvenile(150);
  for (int week = 20; week > 9; --week) offer(animal, now - 7 * week, Outcome::Took);
  for (int week = 9; week > 3; --week) offer(animal, now - 7 * week, Outcome::Refused);
  for (double day = now - 16; day < now; day += 5) offer(animal, day, Outcome::Took);
  const double before = forecast(untaught_model(), animal, moment_of(now)).p_moulted_unseen;
  look(animal, now - 12, {Sign::BrighterColours, Sign::ActiveAgain});
  const Forecast told = forecast(untaught_model(), animal, moment_of(now));
  CHECK(told.p_moulted_unseen > before);
  CHECK(told.p_moulted_unseen > 0.6);
  CHECK(told.next_moult[9] < 0);
}

TEST_CASE("on its back is moulting, a mature male is finished") {
  Evidence animal = juvenile(125);
  look(animal, now - 0.2, {Sign::OnItsBack});
  CHECK(forecast(untaught_model(), animal, moment_of(now)).phase == Phase::Moulting);
  animal.matured = now - 100;
  const Forecast male = forecast(untaught_model(), animal, moment_of(now));
  CHECK(male.phase == Phase::Finished);
  CHECK_FALSE(male.moult_expected);
}

TEST_CASE("each reason weighs what the belief moves by without its observations") {
  const InventedCollection collection = invent(worlds()[0], 30, 900, 21);
  const double day = collection.begins + 850.5;
  std::vector<Evidence> animals;
  for (const InventedAnimal& animal : collection.animals)
    if (auto evidence = gather_evidence(animal.events, moment_of(day).utc))
      animals.push_back(*evidence);
  const CollectionModel model = learn(animals, day);
  int compared = 0;
  for (std::size_t i = 0; i < collection.animals.size() && i < animals.size(); ++i) {
    const auto own = std::ranges::find(animals, animals[i].key, &Evidence::key);
    const Forecast told = forecast(model, *own, moment_of(day));
    for (const Reason& reason : told.why) {
      if (reason.text.find("since its last moult") != std::string::npos) continue;
      // The log itself without these events.
      const auto whose = std::ranges::find_if(collection.animals, [&](const InventedAnimal& a) {
        return a.events.front().animal == own->animal;
      });
      std::vector<Event> less = whose->events;
      std::erase_if(less, [&](const Event& event) {
        return std::ranges::find(reason.events, event.id) != reason.events.end();
      });
      const auto without = gather_evidence(less, moment_of(day).utc);
      const Forecast other = forecast(model, *without, moment_of(day));
      const double moved = log_odds(told.p_premoult) - log_odds(other.p_premoult);
      CHECK(moved == Approx(reason.weight).margin(0.05 + 0.05 * std::abs(reason.weight)));
      ++compared;
    }
  }
  CHECK(compared > 30);
}

TEST_CASE("reasons leave their days to be written as the keeper reads dates") {
  Evidence animal = juvenile(115);
  for (int week = 5; week > 0; --week) offer(animal, now - 7 * week, Outcome::Refused);
  look(animal, now - 3, {Sign::DarkAbdomen});
  bool dated = false;
  for (const Reason& reason : forecast(untaught_model(), animal, moment_of(now)).why) {
    const std::string words =
        with_days(reason.text, reason.days, moment_of(now).day(), DateStyle::Spanish);
    CHECK(words.find_first_of("{}") == std::string::npos);
    CHECK(reason.text.find("20") == std::string::npos);  // no year of its own
    dated = dated || words != reason.text;
  }
  CHECK(dated);
}

TEST_CASE("the remaining time of a cycle that has lasted so long is the conditional one") {
  // lognormal(4, 0.3) given T > 60: median 71.18384933, P(within 7) 0.34270675. Computed.
  Character character;
  character.lengths.all = character.next_length = {{{1, 4, 0.3}, {0, 4, 0.3}}};
  character.habits = prior_habits(documented_priors(), {}, Stage::Juvenile);
  RunningCycle cycle{.start_earliest = 0, .start_latest = 0};
  for (double day = 1; day < 60; day += 1) cycle.visits.push_back(day);
  cycle.visits.insert(cycle.visits.end(), 20, 60);  // had it moulted, a shed had been noticed
  const Belief belief = believe(character, cycle, 60);
  CHECK(quantile(belief, 0.5) == Approx(71.18384933).margin(0.01));
  double within_7 = 0;
  for (const MoultCell& cell : belief.cells)
    if (cell.from >= 60 && cell.to <= 67.001) within_7 += cell.probability;
  CHECK(within_7 == Approx(0.34270675).margin(5e-4));
}

TEST_CASE("the moult strip's density adds up and its ranges hold its median") {
  const Evidence animal = juvenile(100);
  const MoultDensity density = moult_density(untaught_model(), animal, moment_of(now));
  double sum = 0;
  for (const double day : density.a_day) sum += day;
  CHECK(sum == Approx(1).margin(0.01));
  CHECK(density.nine_tenths[0] < density.half[0]);
  CHECK(density.half[0] < density.median);
  CHECK(density.median < density.half[1]);
  CHECK(density.moults.size() == 4);
}

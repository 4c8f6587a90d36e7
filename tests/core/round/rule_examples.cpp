#include "tests/core/round/rule_examples.hpp"

#include <fmt/format.h>

#include "core/care/meals.hpp"
#include "core/event/words.hpp"
#include "core/round/preparation.hpp"
#include "tests/core/care/scenario.hpp"
#include "tests/core/round/rack_room.hpp"

namespace rackside::tests {
namespace {

using Ask = std::function<std::string(const CareRules&)>;

/// What is to be done.
Ask task(Scenario animal) {
  return [animal](const CareRules& rules) mutable {
    animal.rules = rules;
    return std::string(task_name(animal.told().task));
  };
}

/// What is offered, "2 crickets of 10".
Ask prey(Scenario animal) {
  return [animal](const CareRules& rules) mutable {
    animal.rules = rules;
    const PreyPlan prey = animal.told().prey.value();
    return fmt::format("{} {} of {:g}", prey.count, prey.kind, prey.size->value);
  };
}

/// Whether a word is among the reasons.
Ask reason(Scenario animal, std::string word) {
  return [animal, word](const CareRules& rules) mutable {
    animal.rules = rules;
    const auto why = animal.told().why;
    const bool said = std::ranges::any_of(
        why, [&](const std::string& line) { return line.find(word) != std::string::npos; });
    return std::string(said ? "said" : "not said");
  };
}

Ask urgency(Scenario animal) {
  return [animal](const CareRules& rules) mutable {
    animal.rules = rules;
    return std::string(urgency_word(animal.told().urgency));
  };
}

/// The stage a sling of such an instar has grown into after so many moults.
Ask stage(std::optional<int> instar, int moults, Stage came_as) {
  AnimalState animal;
  animal.stage = came_as;
  animal.instar = instar;
  animal.moults = moults;
  return
      [animal](const CareRules& rules) { return std::string(word_of(grown_stage(animal, rules))); };
}

Scenario of(Stage stage) { return Scenario{}.stage(stage).believed(0); }

/// Refused 6 of 9 offers, ate 8 days ago.
Scenario picky() {
  Scenario animal = of(Stage::Juvenile);
  for (int week = 9; week > 0; --week)
    week % 3 == 1 ? animal.meal(7.0 * week + 1) : animal.refusal(7.0 * week + 1);
  return animal;
}

/// Moulted so long ago; its shed was taken out and sexed.
Scenario moulted(double days, Stage stage = Stage::Juvenile) {
  return of(stage)
      .meal(days + 20)
      .ago(days, Moulted{})
      .ago(days - 3, ShedRemoved{})
      .ago(days - 4, Sexed{Sex::Female});
}

Scenario spanning(double millimetres) {
  return of(Stage::Juvenile).ago(60, Measured{Measure::LegSpan, Millimetres{millimetres}});
}

Scenario fasting(Stage stage, double days) {
  return of(stage).meal(days).refusal(20).refusal(10).believed(0.1);
}

Ask male_clock_of(double days) {
  return [days](const CareRules& rules) {
    const auto male = of(Stage::MatureMale).ago(days, Moulted{}).state();
    const std::string said = male_clock(male, rules, Scenario::today())->sentence;
    return said.substr(said.find("; ") + 2, 8);
  };
}

/// Whether rack A is said to refuse as a whole, when so many of its 5 tubs did.
Ask whole_rack_refuses(int refusing) {
  return [refusing](const CareRules& rules) {
    RackRoom room;
    room.rules.collection = rules;
    for (int i = 1; i <= 5; ++i)
      room.tub(i, {"A", "1", std::to_string(i)})
          .happened(2, i, Offered{i <= refusing ? Outcome::Refused : Outcome::Took});
    return std::string(room.plan().notes.empty() ? "no note" : "a note");
  };
}

Ask refusal(double p_premoult) {
  return [p_premoult](const CareRules& rules) {
    return fmt::format("{:.2f}", refusal_probability(Scenario{}.state(), rules, p_premoult));
  };
}

/// Prey to carry for 25 tubs of which each refuses once in five.
Ask to_bring() {
  return [](const CareRules& rules) {
    RackRoom room;
    room.rules.collection = rules;
    for (int i = 1; i <= 25; ++i) room.tub(i, {"A", "1", std::to_string(i)}).believed(i, 0);
    return std::to_string(prepare(room.plan(), room.collection(), rules.margin).prey.at(0).bring);
  };
}

}  // namespace

std::vector<RuleExample> feeding_examples() {
  using enum Stage;
  const Scenario plump = of(Juvenile).meal(8).looked(1, {Sign::PlumpAbdomen});
  const Scenario moved = of(Juvenile).meal(20).ago(3, Rehoused{tub_number(3)});
  return {
      {"feed_every_sling", "5", "offer", "8", "not due", task(of(Sling).meal(6))},
      {"feed_every_juvenile", "7", "offer", "9", "not due", task(of(Juvenile).meal(8))},
      {"feed_every_adult", "12", "offer", "14", "not due", task(of(Adult).meal(13))},
      {"feed_every_mature_male", "10", "offer", "12", "not due", task(of(MatureMale).meal(11))},
      {"feed_every_unknown", "7", "offer", "9", "not due", task(of(Unknown).meal(8))},
      {"sling_until_instar", "5", "sling", "4", "juvenile", stage(5, 3, Sling)},
      {"sling_for_moults", "4", "sling", "3", "juvenile", stage({}, 3, Sling)},
      {"adult_from_instar", "11", "adult", "12", "juvenile", stage(11, 6, Juvenile)},
      {"plump_factor", "1.5", "not due", "1", "offer", task(plump)},
      {"poor_appetite_share", "0.5", "not due", "0.7", "offer", task(picky())},
      {"poor_appetite_factor", "1.5", "not due", "1", "offer", task(picky())},
      {"poor_appetite_offers", "8", "not due", "10", "offer", task(picky())},
      {"retry_after", "4", "offer", "6", "offer again", task(of(Adult).refusal(5))},
      {"settle_after_move", "4", "not due", "2", "offer", task(moved)},
      {"prey", "cricket", "1 cricket of 10", "locust", "1 locust of 10", prey(of(Juvenile))},
      {"prey_count_sling", "1", "1 cricket of 3", "3", "3 cricket of 3", prey(of(Sling))},
      {"prey_count_juvenile", "1", "1 cricket of 10", "2", "2 cricket of 10", prey(of(Juvenile))},
      {"prey_count_adult", "2", "2 cricket of 20", "1", "1 cricket of 20", prey(of(Adult))},
      {"prey_share_of_leg_span", "0.2", "1 cricket of 15", "0.4", "1 cricket of 30",
       prey(spanning(75).meal(20))},
      {"prey_size_sling", "3", "1 cricket of 3", "5", "1 cricket of 5", prey(of(Sling))},
      {"prey_size_juvenile", "10", "1 cricket of 10", "12", "1 cricket of 12", prey(of(Juvenile))},
      {"prey_size_adult", "20", "2 cricket of 20", "25", "2 cricket of 25", prey(of(Adult))},
      {"small_prey_factor", "0.6", "1 cricket of 5", "1", "1 cricket of 10",
       prey(of(Juvenile).meal(20).believed(0.45))},
  };
}

std::vector<RuleExample> tub_examples() {
  using enum Stage;
  const Scenario on_its_back = Scenario{}.looked(1.25, {Sign::OnItsBack});
  const Scenario left = of(Juvenile).ago(1, Offered{Outcome::LeftOvernight});
  const Scenario left_long_ago = of(Juvenile).ago(8, Offered{Outcome::LeftOvernight});
  const Scenario large = spanning(100)
                             .meal(30)
                             .ago(9, Moulted{})
                             .ago(6, ShedRemoved{})
                             .ago(5, Measured{Measure::Carapace, Millimetres{20}})
                             .ago(5, Sexed{Sex::Female});
  const Scenario fresh = of(Juvenile).meal(2).ago(8, ShedFound{}).ago(3, ShedRemoved{});
  return {
      {"withhold_above", "0.55", "offer one small", "0.45", "look for shed",
       task(of(Juvenile).meal(20).believed(0.5))},
      {"one_small_above", "0.35", "offer", "0.2", "offer one small",
       task(of(Juvenile).meal(20).believed(0.3))},
      {"unseen_moult_above", "0.5", "offer", "0.4", "look for shed",
       task(of(Juvenile).meal(20).believed(0.1, 0, 0.45))},
      {"look_in_premoult_every", "3", "look for shed", "5", "withhold",
       task(of(Juvenile).meal(20).looked(4).believed(0.8))},
      {"harden_for", "7", "offer one small", "11", "withhold", task(moulted(9))},
      {"harden_for_large", "12", "offer one small", "16", "withhold", task(moulted(14, Adult))},
      {"large_leg_span", "110", "offer one small", "90", "withhold", task(large)},
      {"moult_takes_at_most", "24", "moult takes too long", "48", "leave alone", task(on_its_back)},
      {"refusing_after_moult", "28", "refuses after moult", "35", "offer one small",
       task(moulted(30).refusal(10))},
      {"shed_rests_for", "2", "take out shed", "4", "leave alone",
       task(of(Juvenile).meal(9).ago(2, ShedFound{}))},
      {"shed_lapses_after", "30", "take out shed", "15", "not due",
       task(of(Juvenile).ago(20, ShedFound{}).meal(2))},
      {"shed_soft_for", "3", "measure from shed", "1", "not due", task(fresh)},
      {"fast_question_sling", "30", "look closer", "40", "offer", task(fasting(Sling, 35))},
      {"fast_question_juvenile", "60", "look closer", "80", "offer", task(fasting(Juvenile, 70))},
      {"fast_question_adult", "150", "look closer", "170", "offer", task(fasting(Adult, 160))},
      {"ask_again_after", "7", "offer", "3", "look closer", task(fasting(Juvenile, 70).looked(5))},
      {"signs_good_for", "14", "look closer", "5", "not due",
       task(of(Juvenile).looked(10, {Sign::Sluggish}).meal(2))},
      {"left_prey_check_after", "1", "due", "2", "wait", urgency(left)},
      {"left_prey_lapses_after", "10", "take out prey", "5", "offer", task(left_long_ago)},
      {"male_months_usual_from", "12", "12 to 18", "10", "10 to 18", male_clock_of(220)},
      {"male_months_usual_to", "18", "12 to 18", "20", "12 to 20", male_clock_of(220)},
  };
}

std::vector<RuleExample> room_examples() {
  const Scenario hungry = of(Stage::Juvenile).meal(20).refusal(9);
  const Scenario shrivelled =
      of(Stage::Juvenile).ago(15, WaterFilled{}).looked(0.1, {Sign::ShrivelledAbdomen});
  return {
      {"water_every", "7", "mist and check water", "10", "not due",
       task(of(Stage::Juvenile).meal(2).ago(9, Misted{}))},
      {"no_water_after", "14", "said", "20", "not said", reason(shrivelled, "last filled")},
      {"reading_good_for", "3", "said", "1", "not said",
       reason(Scenario(hungry).temperature(15, 2), "cold")},
      {"cold_below", "20", "said", "18", "not said",
       reason(Scenario(hungry).temperature(19), "cold")},
      {"dry_below", "50", "said", "40", "not said",
       reason(of(Stage::Juvenile).meal(20).believed(0.8).humidity(45), "dry")},
      {"rack_refuses_share", "0.5", "a note", "0.7", "no note", whole_rack_refuses(3)},
      {"rack_refuses_tubs", "4", "a note", "6", "no note", whole_rack_refuses(5)},
      {"refusal_prior", "0.2", "0.20", "0.4", "0.40", refusal(0)},
      {"refusal_in_premoult", "0.85", "0.85", "0.5", "0.50", refusal(1)},
      // 25 tubs, 5 refusals expected, standard deviation sqrt(25 * 0.2 * 0.8) = 2.
      {"margin", "0", "20", "1.3", "23", to_bring()},
  };
}

}  // namespace rackside::tests

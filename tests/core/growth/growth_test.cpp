#include "core/growth/growth.hpp"

#include <cmath>

#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

const AnimalId animal = animal_number(1);

struct History {
  std::vector<Event> events{
      make_event(0, 0, animal, AnimalAdded{.stage = Stage::Sling, .instar = 3})};

  History& then(Details details) {
    const auto order = static_cast<std::int64_t>(events.size());
    events.push_back(make_event(order, static_cast<double>(order), animal, std::move(details)));
    return *this;
  }
  History& span(double mm) { return then(Measured{Measure::LegSpan, Millimetres{mm}}); }
  [[nodiscard]] std::vector<GrowthStep> steps() const { return growth_of(events); }
};

}  // namespace

TEST_CASE("a measure belongs to the time between the moults in which it was made") {
  const auto steps =
      History{}.span(20).then(Moulted{}).span(24).span(25).then(ShedFound{}).then(Noted{}).steps();
  REQUIRE(steps.size() == 3);
  CHECK(steps[0].instar == 3);
  CHECK(steps[0].leg_span == Millimetres{20});
  CHECK(steps[1].leg_span == Millimetres{25});
  CHECK(steps[2].instar == 5);
  CHECK_FALSE(steps[2].leg_span);
}

TEST_CASE("a moult that is taken back is no step") {
  History history;
  history.span(20).then(Moulted{}).span(25);
  history.then(Retracted{event_number(2)});
  CHECK(history.steps().size() == 1);
}

// Grammostola vachoni grows by 38 % a moult, the same at every moult: Zool. Anz. 293:37-45 (2021),
// abstract. Such a record must be told as just that, also where a moult was not measured.
TEST_CASE("a record that grows by 38 % a moult is told as 38 % a moult") {
  History history;
  double span = 10;
  for (int moult = 0; moult < 6; ++moult, span *= 1.38) {
    if (moult != 2 && moult != 3) history.span(span);
    history.then(ShedFound{});
  }
  const auto summary = summarise_growth(Measure::LegSpan, history.steps()).value();
  CHECK(summary.ratio == Approx(1.38).epsilon(1e-12));
  CHECK(summary.moults == 5);
  CHECK(summary.next.value == Approx(10 * std::pow(1.38, 6)));
  CHECK(summary.sentence ==
        "Leg span grew by 38 % a moult over 5 moults; 26 to 29 % is usual in spiders.");
}

// Przibram's rule: the volume doubles at each moult, so a length grows by the cube root of two.
TEST_CASE("the check values are those of the rule and of the spiders measured") {
  CHECK(przibram_ratio * przibram_ratio * przibram_ratio == Approx(2.0).epsilon(1e-15));
  // Faber 1994, J. Zool.: 1.29 in length beside 2.09 in weight. Cubed it is a little more than the
  // weight says, as legs grow faster than the body.
  CHECK(faber_ratio * faber_ratio * faber_ratio == Approx(2.09).epsilon(0.05));
}

TEST_CASE("a measure in the wrong unit is named and kept out of the mean") {
  const auto steps = History{}.span(40).then(Moulted{}).span(52).then(Moulted{}).span(6.6).steps();
  const auto growth = growth_in(Measure::LegSpan, steps);
  REQUIRE(growth.size() == 2);
  CHECK(growth[0].plausible);
  CHECK_FALSE(growth[1].plausible);
  CHECK(summarise_growth(Measure::LegSpan, steps)->ratio == Approx(1.3));
}

TEST_CASE("a measure in the wrong unit is passed over, wherever it stands") {
  const auto between = [](std::vector<double> spans) {
    History history;
    for (const double span : spans) history.span(span).then(Moulted{});
    return history.steps();
  };
  // Inches instead of centimetres in the middle; the next one fits the one before again.
  const auto middle = summarise_growth(Measure::LegSpan, between({40, 2, 67.6}));
  REQUIRE(middle);
  CHECK(middle->ratio == Approx(1.3));
  CHECK(middle->moults == 2);
  const auto first = summarise_growth(Measure::LegSpan, between({1.6, 52, 67.6}));
  REQUIRE(first);
  CHECK(first->ratio == Approx(1.3));
  CHECK(first->moults == 1);
}

TEST_CASE("one measure, or none, or two without a moult between them, is no growth") {
  CHECK_FALSE(summarise_growth(Measure::LegSpan, History{}.steps()));
  CHECK_FALSE(summarise_growth(Measure::LegSpan, History{}.span(20).span(21).steps()));
  CHECK_FALSE(
      summarise_growth(Measure::Carapace, History{}.span(20).then(Moulted{}).span(26).steps()));
  CHECK_FALSE(
      summarise_growth(Measure::LegSpan, History{}.span(0).then(Moulted{}).span(26).steps()));
}

TEST_CASE("growth of any record whatsoever is a positive number or none") {
  rc::prop("any log", [] {
    const auto steps = growth_of(*any_log(80));
    for (const Measure what : {Measure::LegSpan, Measure::Carapace})
      if (const auto summary = summarise_growth(what, steps))
        RC_ASSERT(std::isfinite(summary->ratio) && summary->ratio > 0);
  });
}

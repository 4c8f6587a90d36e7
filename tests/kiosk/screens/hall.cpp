// A hall of 2,000 tubs in all the states there are, for the screens that look at a collection.

#include "tests/kiosk/screens/collections.hpp"

#include "core/code/code_of_name.hpp"
#include "kiosk/model/update.hpp"
#include "tests/fakes/fixed_clock.hpp"
#include "tests/generators/events.hpp"

namespace rackside::tests {
namespace {

using kiosk::Model;
using kiosk::ScreenName;

constexpr int tubs = 2000;
constexpr int tubs_a_rack = 230;
constexpr int tubs_a_shelf = 23;

const Moment now = at_hour(24 * 40 + 20).moment;

Code hall_tub(int number) {
  return code_of_name(CodeKind::Enclosure, "hall " + std::to_string(number));
}

When days_ago(double days) { return at_hour(24 * (40 - days) + 20); }

AnimalState animal_in(const Code& tub, int i) {
  AnimalState animal{.id = animal_number(i),
                     .key = "hall-" + std::to_string(i),
                     .species = i % 3 == 0 ? "Pseudohapalopus cf. spinulopalpus var. longissima"
                                           : "Omothymus violaceopes",
                     .stage = i % 41 == 0 ? Stage::MatureMale : Stage::Juvenile,
                     .added = days_ago(900),
                     .enclosure = tub,
                     .housed = days_ago(300)};
  if (i % 17 != 0) animal.last_meal = days_ago(i % 12);
  if (i % 17 != 0) animal.last_offer = LastOffer{Outcome::Took, *animal.last_meal};
  if (i % 13 == 0) animal.last_moult = LastMoult{days_ago(2), true};
  if (i % 29 == 0) animal.on_its_back_since = days_ago(0.1);
  if (i % 29 == 0) animal.last_offer.reset();
  if (i % 37 == 0) animal.refusals_since_meal = 3;
  if (i % 43 == 0) animal.guards_sac_since = days_ago(10);
  if (i % 31 == 0) animal.last_looked = days_ago(1);
  if (i % 31 == 0) animal.signs = SignSet{Sign::ShrivelledAbdomen};
  return animal;
}

Forecast forecast_for(const AnimalId& animal, int i) {
  Forecast forecast{.animal = animal, .as_of = now.utc};
  forecast.p_premoult = i % 5 == 0 ? 0.8 : 0.1;
  forecast.p_moulted_unseen = i % 23 == 0 ? 0.66 : 0.02;
  const double from = i % 23 == 0 ? -25 : 2 + i % 90;
  const double length = 8 + i % 60;
  for (std::size_t q = 0; q < moult_quantiles; ++q)
    forecast.next_moult[q] = from + length * static_cast<double>(q) / moult_quantiles;
  return forecast;
}

void add_air(AirDays& air, const std::string& rack, double warm) {
  AirSeries& series = air.racks[rack];
  for (int hour = 24 * 7; hour > 3; hour -= 3) {
    const double swing = (hour % 24 < 12 ? 1.0 : -1.0) * (hour % 12) / 6.0;
    series.temperature.push_back({event_number(hour), days_ago(hour / 24.0), warm + swing});
    series.humidity.push_back({event_number(hour), days_ago(hour / 24.0), 58 - 4 * swing});
  }
}

Overview hall() {
  Overview overview;
  for (int i = 1; i <= tubs; ++i) {
    const Code tub = hall_tub(i);
    const int rack = (i - 1) / tubs_a_rack;
    const int in_rack = (i - 1) % tubs_a_rack;
    EnclosureState& enclosure =
        overview.collection.enclosures.try_emplace(tub, EnclosureState{.code = tub}).first->second;
    enclosure.place = {
        rack == 0 ? "Kellerregal links" : std::string(1, static_cast<char>('A' + rack)),
        std::to_string(1 + in_rack / tubs_a_shelf), std::to_string(1 + in_rack)};
    if (i % 19 == 0) continue;
    const AnimalState animal = animal_in(tub, i);
    overview.collection.animals.emplace(animal.id, animal);
    enclosure.residents.push_back(animal.id);
    overview.forecasts.emplace(animal.id, forecast_for(animal.id, i));
  }
  add_air(overview.air, "", 24);
  add_air(overview.air, "Kellerregal links", 18);
  add_air(overview.air, "C", 26);
  overview.climate = climate_of(overview.air);
  return overview;
}

struct Hall {
  Model model;
  Hall() {
    model = kiosk::begin("keeper", now, {}).first;
    does(kiosk::OverviewReady{hall(), {}});
  }
  Hall& does(const kiosk::Intent& intent) {
    model = kiosk::update(std::move(model), intent, {now, event_number(9000)}).first;
    return *this;
  }
  Hall& show(ScreenName screen) { return does(kiosk::Show{screen}); }
};

// The whole life of one animal that was measured often, and once in inches for centimetres.
TableKiosk measured() {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Pseudohapalopus cf. spinulopalpus var. longissima");
  double span = 12;
  for (int moult = 12; moult > 0; --moult) {
    kiosk.happened(tub, 60 * moult, ShedFound{});
    span *= 1.24;
    const bool slip = moult == 4;
    if (moult % 3 != 0)
      kiosk.happened(tub, 60 * moult - 1,
                     Measured{Measure::LegSpan, {slip ? span / 2.54 : std::round(span)}});
    if (moult < 6)
      kiosk.happened(tub, 60 * moult - 2, Measured{Measure::Carapace, {std::round(span * 0.34)}});
  }
  kiosk.start();
  kiosk.scans(tub);
  kiosk.does(kiosk::Show{ScreenName::Growth});
  return kiosk;
}

Model never_measured() {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Neoholothele incei");
  kiosk.start();
  kiosk.scans(tub);
  kiosk.does(kiosk::Show{ScreenName::Growth});
  return kiosk.model();
}

Model number_refused() {
  Hall hall;
  hall.show(ScreenName::Air);
  hall.does(kiosk::AskNumber{{.what = kiosk::NumberOf::Temperature, .rack = "Kellerregal links"}});
  for (const char* c : {"2", "4", "5"}) hall.does(kiosk::Typed{c});
  return hall.does(kiosk::Enter{}).model;
}

Model measure_saved() {
  TableKiosk kiosk = measured();
  kiosk.does(kiosk::AskNumber{
      {kiosk::NumberOf::LegSpan, kiosk.model().tub->animal, kiosk.model().tub->code, {}}});
  for (const char* c : {"1", "6", "2", ".", "5"}) kiosk.does(kiosk::Typed{c});
  kiosk.does(kiosk::Enter{});
  return kiosk.model();
}

}  // namespace

std::vector<Situation> hall_situations() {
  return {
      {"map_racks", [] { return Hall{}.show(ScreenName::Map).model; }},
      {"map", [] { return Hall{}.does(kiosk::OpenTub{hall_tub(2)}).show(ScreenName::Map).model; }},
      {"map_shelf",
       [] {
         return Hall{}.does(kiosk::CodeRead{std::string(code_of_shelf("C", "7").text())}).model;
       }},
      {"weeks", [] { return Hall{}.show(ScreenName::Weeks).model; }},
      {"weeks_last", [] { return Hall{}.show(ScreenName::Weeks).does(kiosk::Turn{60}).model; }},
      {"air", [] { return Hall{}.show(ScreenName::Air).model; }},
      {"number", number_refused},
      {"find_states", [] { return Hall{}.show(ScreenName::Find).model; }},
      {"find_overdue", [] { return Hall{}.does(kiosk::LookFor{"overdue"}).model; }},
      {"growth", [] { return measured().model(); }},
      {"growth_saved", measure_saved},
      {"growth_none", never_measured},
  };
}

}  // namespace rackside::tests

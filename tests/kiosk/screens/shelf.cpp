#include "tests/kiosk/screens/shelf.hpp"

#include "tests/generators/events.hpp"

namespace rackside::tests {

using kiosk::Model;
using kiosk::ScreenName;

namespace {

// One long history: three cycles, meals, refusals, signs.
void tell_a_life(TableKiosk& kiosk, const Code& tub) {
  for (int day = 400; day > 5; day -= 7) {
    const bool off_food = day % 130 < 35;
    kiosk.happened(
        tub, day,
        Offered{off_food ? Outcome::Refused : Outcome::Took, "cricket", 1, Millimetres{8}});
    if (off_food && day % 3 == 0) kiosk.happened(tub, day, Looked{{Sign::DarkAbdomen}});
    if (day % 130 < 7) kiosk.happened(tub, day - 1, ShedFound{});
  }
  kiosk.happened(tub, 2, Offered{Outcome::LeftOvernight, "cricket", 2, Millimetres{12.5}});
}

Forecast some_forecast(AnimalId animal, Instant as_of) {
  Forecast forecast{.animal = animal, .as_of = as_of, .phase = Phase::Premoult, .p_premoult = 0.83};
  for (std::size_t i = 0; i < moult_quantiles; ++i)
    forecast.next_moult[i] = 3 + 2.0 * static_cast<double>(i) + 0.06 * static_cast<double>(i * i);
  forecast.why = {{"refused 3 of the last 3 meals; it usually refuses 1 in 9", 2.1, {}},
                  {"the abdomen was seen dark and glossy on 3 November", 1.4, {}},
                  {"last moult 112 days ago; the last intervals were 98 and 121 days", 0.8, {}}};
  return forecast;
}

MoultDensity some_density(int days) {
  MoultDensity density{.first_day = 0,
                       .a_day = {},
                       .median = 0.3 * days,
                       .half = {0.2 * days, 0.43 * days},
                       .nine_tenths = {0.07 * days, 0.73 * days},
                       .moults = {}};
  for (int day = 0; day < days; ++day)
    density.a_day.push_back(6.0 * day * (days - day) / days / days / days);
  return density;
}

}  // namespace

Shelf::Shelf() : first(kiosk.house(1, longest, {"Kellerregal links", "12", "104"})), last(first) {
  for (int i = 2; i <= 30; ++i)
    last = kiosk.house(i, i % 2 == 0 ? "Kochiana brunnipes" : longest,
                       {"A", std::to_string(1 + i / 10), std::to_string(i)});
  tell_a_life(kiosk, first);
  kiosk.happened(last, 40, Died{});
  kiosk.start();
}

Model Shelf::show(ScreenName screen) {
  kiosk.does(kiosk::Show{screen});
  return kiosk.model();
}

void Shelf::open_with_forecast(int days_ahead) {
  kiosk.scans(first);
  // The phase decides the tiles when the tub is opened, so it is opened again.
  const Forecast forecast = some_forecast(kiosk.animal_of(first), kiosk.clock.now().utc);
  kiosk.does(kiosk::ForecastReady{forecast, some_density(days_ahead)});
  kiosk.scans(first);
  kiosk.does(kiosk::ForecastReady{forecast, some_density(days_ahead)});
}

Staff::Staff() {
  kiosk.works_here("Maximiliane von der Heyden-Osterwald", Role::Keeper);
  for (const char* name : {"Ines", "Oskar", "Aiko", "Bartholomew", "Chidi", "Danuta", "Ewa"})
    kiosk.works_here(name, Role::Assistant);
  const Day day = kiosk.clock.now().day();
  kiosk.works_here("Wolfgang Amadeus Featherstonehaugh", Role::Assistant, day);
  kiosk.works_here("Yesterday's stand-in", Role::Assistant, day - std::chrono::days{1});
  kiosk.pin.pin = "7294";
  kiosk.start();
  kiosk.scans(badge_of(keeper()));
}

Model Staff::with_pin(const kiosk::Intent& then) {
  kiosk.does(kiosk::Show{ScreenName::People});
  kiosk.types_pin("7294");
  kiosk.does(then);
  return kiosk.model();
}

}  // namespace rackside::tests

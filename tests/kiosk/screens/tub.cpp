// One tub and its records.

#include <cmath>

#include "tests/generators/events.hpp"
#include "tests/kiosk/screens/shelf.hpp"

namespace rackside::tests {

using kiosk::Model;
using kiosk::ScreenName;

std::vector<Situation> tub_situations() {
  return {
      {"tub",
       [] {
         Shelf shelf;
         shelf.open_with_forecast();
         return shelf.kiosk.model();
       }},
      {"tub_years_ahead",
       [] {
         Shelf shelf;
         shelf.open_with_forecast(6000);
         return shelf.kiosk.model();
       }},
      {"tub_warmth",
       [] {
         Shelf shelf;
         constexpr int days = 35;
         shelf.kiosk.clock.advance(-std::chrono::hours{24 * days});
         for (int i = 0; i < days; ++i) {
           shelf.kiosk.sets(TemperatureRead{Celsius{24 + 3 * std::sin(i / 5.0)}, ""});
           shelf.kiosk.clock.advance(std::chrono::hours{24});
         }
         shelf.kiosk.start();
         shelf.open_with_forecast();
         return shelf.kiosk.model();
       }},
      {"tub_shared",
       [] {
         Shelf shelf;
         const Code other = shelf.kiosk.house(50, "Neoholothele incei");
         shelf.kiosk.happened(other, 1, Rehoused{shelf.first});
         shelf.kiosk.start();
         shelf.kiosk.scans(shelf.first);
         return shelf.kiosk.model();
       }},
      {"tub_more_tiles",
       [] {
         Shelf shelf;
         shelf.open_with_forecast();
         shelf.kiosk.does(kiosk::TurnTiles{});
         return shelf.kiosk.model();
       }},
      {"tub_saved",
       [] {
         Shelf shelf;
         shelf.open_with_forecast();
         shelf.kiosk.does(kiosk::Record{Action::LeftOvernight});
         return shelf.kiosk.model();
       }},
      {"tub_undone",
       [] {
         Shelf shelf;
         shelf.open_with_forecast();
         shelf.kiosk.does(kiosk::Record{Action::LeftOvernight});
         shelf.kiosk.does(kiosk::Record{Action::Undo});
         return shelf.kiosk.model();
       }},
      {"tub_died",
       [] {
         Shelf shelf;
         shelf.kiosk.scans(shelf.last);
         return shelf.kiosk.model();
       }},
      {"records",
       [] {
         Shelf shelf;
         shelf.open_with_forecast();
         shelf.kiosk.does(kiosk::Record{Action::Misted});
         shelf.kiosk.does(kiosk::Record{Action::Undo});
         return shelf.show(ScreenName::Records);
       }},
      {"records_meals",
       [] {
         Shelf shelf;
         shelf.open_with_forecast();
         shelf.kiosk.does(kiosk::Show{ScreenName::Records});
         shelf.kiosk.does(kiosk::NextFilter{});
         return shelf.kiosk.model();
       }},
      {"correct",
       [] {
         Shelf shelf;
         shelf.open_with_forecast();
         shelf.kiosk.does(kiosk::LookAt{shelf.kiosk.model().tub->history->back().id});
         return shelf.kiosk.model();
       }},
      {"correct_signs",
       [] {
         Shelf shelf;
         shelf.open_with_forecast();
         shelf.kiosk.does(kiosk::Record{Action::DarkAbdomen});
         shelf.kiosk.does(kiosk::LookAt{shelf.kiosk.model().tub->history->back().id});
         shelf.kiosk.does(kiosk::CorrectDay{9});
         return shelf.kiosk.model();
       }},
  };
}

}  // namespace rackside::tests

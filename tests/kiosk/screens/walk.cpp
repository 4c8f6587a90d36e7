// The round and what is reached from it.

#include "tests/generators/events.hpp"
#include "tests/kiosk/screens/shelf.hpp"

namespace rackside::tests {

using kiosk::Model;
using kiosk::ScreenName;

namespace {

Model empty_room() {
  TableKiosk kiosk;
  kiosk.start();
  kiosk.does(kiosk::Close{});
  return kiosk.model();
}

}  // namespace

std::vector<Situation> walk_situations() {
  return {
      {"empty_room", empty_room},
      {"round", [] { return Shelf{}.show(ScreenName::Round); }},
      {"round_foreign_code",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::CodeRead{"https://example.org"});
         return shelf.kiosk.model();
       }},
      {"carry", [] { return Shelf{}.show(ScreenName::Carry); }},
      {"carry_many_prey",
       [] {
         Shelf shelf;
         for (int i = 0; i < 9; ++i) {
           const Code tub = shelf.kiosk.house(60 + i, "Haplocosmia himalayana");
           const double size = i < 5 ? 5 : 8;
           shelf.kiosk.happened(
               tub, 40,
               Offered{Outcome::Took,
                       i % 2 == 0 ? "Turkestan roach nymph" : "locust " + std::to_string(i), 1,
                       Millimetres{size}});
         }
         shelf.kiosk.start();
         return shelf.show(ScreenName::Carry);
       }},
      {"round_under_way",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::SetOut{});
         shelf.kiosk.scans(shelf.first);
         shelf.kiosk.does(kiosk::Record{Action::PreyRemoved});
         return shelf.show(ScreenName::Round);
       }},
      {"summary",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::SetOut{});
         shelf.kiosk.scans(shelf.first);
         shelf.kiosk.does(kiosk::Record{Action::PreyRemoved});
         shelf.kiosk.does(kiosk::EndRound{});
         return shelf.kiosk.model();
       }},
      {"keypad",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::Show{ScreenName::Keypad});
         for (const char* c : {"T", "4", "K"}) shelf.kiosk.does(kiosk::Typed{c});
         return shelf.kiosk.model();
       }},
      {"keypad_wrong",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::Show{ScreenName::Keypad});
         for (const char c : std::string("T4K7M2X0"))
           shelf.kiosk.does(kiosk::Typed{std::string(1, c)});
         return shelf.kiosk.model();
       }},
      {"find",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::Show{ScreenName::Find});
         for (const char* c : {"p", "s", "e"}) shelf.kiosk.does(kiosk::Typed{c});
         return shelf.kiosk.model();
       }},
      {"drawer", [] { return Shelf{}.show(ScreenName::Drawer); }},
      {"find_nothing",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::Show{ScreenName::Find});
         for (const char* c : {"x", "x"}) shelf.kiosk.does(kiosk::Typed{c});
         return shelf.kiosk.model();
       }},
  };
}

}  // namespace rackside::tests

// People, PINs, and what somebody who stands in sees.

#include "tests/generators/events.hpp"
#include "tests/kiosk/screens/shelf.hpp"

namespace rackside::tests {

using kiosk::Model;
using kiosk::ScreenName;

std::vector<Situation> staff_situations() {
  return {
      {"who",
       [] {
         Staff staff;
         staff.kiosk.does(kiosk::StepAside{});
         staff.kiosk.scans(staff.first);
         staff.kiosk.does(kiosk::Record{Action::Misted});
         return staff.kiosk.model();
       }},
      {"who_unknown_badge",
       [] {
         Staff staff;
         staff.kiosk.does(kiosk::Show{ScreenName::Who});
         staff.kiosk.scans(badge_of("Yesterday's stand-in"));
         return staff.kiosk.model();
       }},
      {"pin",
       [] {
         Staff staff;
         staff.kiosk.scans(staff.first);
         staff.kiosk.does(kiosk::Record{Action::Died});
         for (const char* digit : {"7", "2"}) staff.kiosk.does(kiosk::Typed{digit});
         return staff.kiosk.model();
       }},
      {"pin_too_many_tries",
       [] {
         Staff staff;
         staff.kiosk.does(kiosk::Leave{});
         for (int i = 0; i < 4; ++i) staff.kiosk.types_pin("7000");
         return staff.kiosk.model();
       }},
      {"pin_new", [] { return Staff{}.with_pin(kiosk::ChangePin{}); }},
      {"pin_too_simple",
       [] {
         Staff staff;
         staff.with_pin(kiosk::ChangePin{});
         staff.kiosk.types_pin("1234");
         return staff.kiosk.model();
       }},
      {"pin_again",
       [] {
         Staff staff;
         staff.with_pin(kiosk::ChangePin{});
         staff.kiosk.types_pin("48271936");
         return staff.kiosk.model();
       }},
      {"people_none", [] { return Shelf{}.show(ScreenName::People); }},
      {"people", [] { return Staff{}.with_pin(kiosk::Turn{0}); }},
      {"people_over", [] { return Staff{}.with_pin(kiosk::Turn{1}); }},
      {"person", [] { return Staff{}.with_pin(kiosk::OpenPerson{Staff::keeper()}); }},
      {"person_only_keeper",
       [] {
         Staff staff;
         staff.with_pin(kiosk::OpenPerson{Staff::keeper()});
         staff.kiosk.does(kiosk::EndAccess{});
         return staff.kiosk.model();
       }},
      {"person_over", [] { return Staff{}.with_pin(kiosk::OpenPerson{"Yesterday's stand-in"}); }},
      {"person_name",
       [] {
         Staff staff;
         staff.with_pin(kiosk::Ask{kiosk::AskPerson{Role::Assistant}});
         for (const char c : std::string("ines")) staff.kiosk.does(kiosk::Typed{std::string(1, c)});
         staff.kiosk.does(kiosk::Enter{});
         return staff.kiosk.model();
       }},
      {"refused_to_assistant",
       [] {
         Staff staff;
         staff.kiosk.scans(badge_of("Oskar"));
         staff.kiosk.scans(staff.first);
         staff.kiosk.does(kiosk::Record{Action::Died});
         return staff.kiosk.model();
       }},
      {"plain_tub",
       [] {
         Staff staff;
         staff.kiosk.scans(badge_of("Oskar"));
         staff.kiosk.scans(staff.first);
         return staff.kiosk.model();
       }},
      {"plain_tub_offer",
       [] {
         Staff staff;
         staff.kiosk.scans(badge_of("Oskar"));
         staff.kiosk.scans(tub_number(3));
         return staff.kiosk.model();
       }},
      {"plain_tub_flagged",
       [] {
         Staff staff;
         staff.kiosk.scans(badge_of("Oskar"));
         staff.kiosk.scans(tub_number(3));
         staff.kiosk.does(kiosk::Ask{kiosk::AskWrong{tub_number(3)}});
         staff.kiosk.does(kiosk::AnswerWith{"It lies beside its water and hardly moves."});
         return staff.kiosk.model();
       }},
      {"what_is_wrong",
       [] {
         Staff staff;
         staff.kiosk.scans(badge_of("Oskar"));
         staff.kiosk.scans(staff.first);
         staff.kiosk.does(kiosk::Ask{kiosk::AskWrong{staff.first}});
         for (const char* c : {"h", "u", "r", "t"}) staff.kiosk.does(kiosk::Typed{c});
         return staff.kiosk.model();
       }},
      {"drawer_stand_in",
       [] {
         Staff staff;
         staff.kiosk.scans(badge_of("Oskar"));
         return staff.show(ScreenName::Drawer);
       }},
  };
}

}  // namespace rackside::tests

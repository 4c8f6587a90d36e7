// Who is at the kiosk: by badge, by name, by being the only one; and for how long.

#include "kiosk/model/permission.hpp"
#include "tests/frame.hpp"
#include "tests/kiosk/model/staffed_kiosk.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;
using namespace std::chrono_literals;
using Catch::Matchers::Contains;

namespace {

// The last event of this kind, with who said it.
template <class Kind>
std::optional<Event> last(StaffedKiosk& kiosk) {
  std::optional<Event> found;
  for (const Event& event : kiosk.everything())
    if (std::holds_alternative<Kind>(event.details)) found = event;
  return found;
}

void types(TableKiosk& kiosk, const std::string& words) {
  for (const char c : words) kiosk.does(Typed{std::string(1, c)});
  kiosk.does(Enter{});
}

}  // namespace

TEST_CASE("a badge says who is there, and what follows bears that name") {
  StaffedKiosk kiosk;
  CHECK(kiosk.model().by.empty());
  kiosk.scans_badge("Oskar");
  CHECK(kiosk.notice() == "Oskar is at the kiosk.");
  CHECK(last<PersonCame>(kiosk)->details == Details{PersonCame{"Oskar", Arrival::Badge}});
  kiosk.scans(kiosk.tub);
  kiosk.does(Record{Action::Refused});
  CHECK(last<Offered>(kiosk)->by == "Oskar");
}

TEST_CASE("with no badge at hand a name is picked, the log says so, and the tap is not lost") {
  StaffedKiosk kiosk;
  kiosk.scans(kiosk.tub);
  kiosk.does(Record{Action::Refused});
  REQUIRE(kiosk.model().screen == ScreenName::Who);
  CHECK_FALSE(last<Offered>(kiosk));
  kiosk.does(PickPerson{"Oskar"});
  CHECK(last<PersonCame>(kiosk)->details == Details{PersonCame{"Oskar", Arrival::Picked}});
  CHECK(kiosk.model().screen == ScreenName::Tub);
  REQUIRE(last<Offered>(kiosk));
  CHECK(last<Offered>(kiosk)->by == "Oskar");
}

TEST_CASE("going back from the question drops what was wanted") {
  StaffedKiosk kiosk;
  kiosk.scans(kiosk.tub);
  kiosk.does(Record{Action::Refused});
  kiosk.does(Close{});
  CHECK(kiosk.model().screen == ScreenName::Tub);
  kiosk.scans_badge("Oskar");
  CHECK_FALSE(last<Offered>(kiosk));
}

TEST_CASE("an unknown badge and one whose time is over are told apart and let nobody in") {
  StaffedKiosk kiosk;
  kiosk.scans_badge("Somebody");
  CHECK_THAT(kiosk.notice(), Contains("belongs to nobody here"));
  kiosk.works_here("Aiko", Role::Assistant, kiosk.clock.now().day() - std::chrono::days{1});
  kiosk.start();
  kiosk.scans_badge("Aiko");
  CHECK_THAT(kiosk.notice(), Contains("Aiko's last day here was"));
  CHECK(kiosk.model().by.empty());
  CHECK_FALSE(last<PersonCame>(kiosk));
}

TEST_CASE("access that ends while somebody is at the kiosk ends what they may do") {
  StaffedKiosk kiosk;
  kiosk.works_here("Aiko", Role::Assistant, kiosk.clock.now().day());
  kiosk.start();
  kiosk.scans_badge("Aiko");
  REQUIRE(kiosk.model().by == "Aiko");
  for (int i = 0; i < 20; ++i) {  // past midnight, without a pause
    kiosk.clock.advance(15min);
    kiosk.does(Turn{0});
  }
  kiosk.scans(kiosk.tub);
  kiosk.does(Record{Action::Misted});
  CHECK(kiosk.model().screen == ScreenName::Who);
}

TEST_CASE("whoever is the only one here is not asked") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Ephebopus cyanognathus");
  kiosk.works_here("Ines", Role::Keeper);
  kiosk.pin.pin = "7294";
  kiosk.start();
  kiosk.scans(tub);
  kiosk.does(Record{Action::Misted});
  CHECK(kiosk.log_of(tub) == std::vector<std::string>{"misted"});
  kiosk.does(Record{Action::Died});
  CHECK(kiosk.model().screen == ScreenName::Pin);
}

TEST_CASE("after a long pause somebody else may be standing there") {
  StaffedKiosk kiosk;
  kiosk.scans_badge("Oskar");
  kiosk.scans(kiosk.tub);
  kiosk.clock.advance(presence_lasts - 1s);
  kiosk.does(Record{Action::Misted});
  REQUIRE(kiosk.model().by == "Oskar");
  kiosk.clock.advance(presence_lasts);
  kiosk.does(Record{Action::WaterFilled});
  CHECK(kiosk.model().screen == ScreenName::Who);
}

TEST_CASE(
    "a log without people works as it always did, and the first keeper is set up by name and PIN") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Encyocratella olivacea");
  kiosk.start();
  kiosk.scans(tub);
  kiosk.does(Record{Action::Died});
  CHECK(kiosk.log_of(tub) == std::vector<std::string>{"died"});
  kiosk.does(Ask{AskPerson{Role::Keeper}});
  types(kiosk, "ines");
  REQUIRE(kiosk.model().screen == ScreenName::Pin);
  CHECK(kiosk.model().people.nobody());
  kiosk.types_pin("1234");
  CHECK_THAT(kiosk.notice(), Contains("among the first that anybody would try"));
  kiosk.types_pin("7294");
  kiosk.types_pin("7249");
  CHECK_THAT(kiosk.notice(), Contains("not the same"));
  kiosk.types_pin("7294");
  kiosk.types_pin("7294");
  CHECK(kiosk.pin.pin == "7294");
  CHECK(kiosk.model().by == "Ines");
  CHECK(kiosk.model().screen == ScreenName::Person);
  CHECK(standing_of(kiosk.model()) == Standing::Proven);
}

TEST_CASE("a first start with nobody and nothing asks for a keeper, and can be put off") {
  TableKiosk kiosk;
  kiosk.start();
  CHECK(kiosk.model().screen == ScreenName::People);
  kiosk.does(Close{});
  CHECK(kiosk.model().screen == ScreenName::Round);
  kiosk.does(Show{ScreenName::NewTubs});
  CHECK(kiosk.model().screen == ScreenName::NewTubs);
}

TEST_CASE("a keeper without a PIN does not come into being") {
  TableKiosk kiosk;
  kiosk.house(1, "Encyocratella olivacea");
  kiosk.start();
  kiosk.does(Ask{AskPerson{Role::Keeper}});
  types(kiosk, "ines");
  kiosk.does(Close{});
  CHECK(kiosk.model().people.nobody());
  CHECK_FALSE(kiosk.pin.pin);
}

TEST_CASE("a keeper adds an assistant, ends their access and gives it again") {
  StaffedKiosk kiosk;
  kiosk.scans_badge("Ines");
  kiosk.gives_pin();
  kiosk.does(Ask{AskPerson{Role::Assistant}});
  types(kiosk, "aiko");
  REQUIRE(kiosk.model().people.named("Aiko") != nullptr);
  CHECK(last<PersonAdded>(kiosk)->by == "Ines");
  kiosk.does(EndAccess{});
  CHECK(last<PersonEnded>(kiosk)->details == Details{PersonEnded{"Aiko"}});
  kiosk.scans_badge("Aiko");
  CHECK_THAT(kiosk.notice(), Contains("access was ended"));
  kiosk.does(OpenPerson{"Aiko"});
  kiosk.does(GiveAccess{});
  kiosk.scans_badge("Aiko");
  CHECK(kiosk.model().by == "Aiko");
}

TEST_CASE("the only keeper stays") {
  StaffedKiosk kiosk;
  kiosk.scans_badge("Ines");
  kiosk.gives_pin();
  kiosk.does(OpenPerson{"Ines"});
  kiosk.does(EndAccess{});
  CHECK_THAT(kiosk.notice(), Contains("the only keeper"));
  CHECK_FALSE(last<PersonEnded>(kiosk));
}

#include "core/people/people.hpp"

#include <algorithm>

#include "core/collection/collection.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

const Day today = at_hour(24 * 10).moment.day();

Event about(std::int64_t order, Details details) {
  Event event =
      make_event(order, 24.0 * static_cast<double>(order), animal_number(0), std::move(details));
  event.animal.reset();
  return event;
}

People ines_and_oskar() {
  return fold_people({about(1, PersonAdded{"Ines", Role::Keeper, {}}),
                      about(2, PersonAdded{"Oskar", Role::Assistant, {}})});
}

std::vector<std::string> names(const std::vector<const Person*>& people) {
  std::vector<std::string> list;
  for (const Person* person : people) list.push_back(person->name);
  return list;
}

}  // namespace

TEST_CASE("a badge opens the kiosk for the person whose name it was made of") {
  const People people = ines_and_oskar();
  const auto person = person_with_badge(people, badge_of("Oskar"), today);
  REQUIRE(person);
  CHECK(person->name == "Oskar");
  CHECK(person->role == Role::Assistant);
}

TEST_CASE("a badge of nobody here is told by its code") {
  const auto person = person_with_badge(ines_and_oskar(), badge_of("Somebody else"), today);
  REQUIRE_FALSE(person);
  CHECK(person.error().kind == ErrorKind::NotFound);
  CHECK_THAT(person.error().sentence,
             Catch::Matchers::Contains(badge_of("Somebody else").grouped()));
}

TEST_CASE("a badge whose access was ended opens nothing, until the person is added again") {
  std::vector<Event> events{about(1, PersonAdded{"Oskar", Role::Assistant, {}}),
                            about(3, PersonEnded{"Oskar"})};
  const auto person = person_with_badge(fold_people(events), badge_of("Oskar"), today);
  REQUIRE_FALSE(person);
  CHECK(person.error().kind == ErrorKind::NotAllowed);
  CHECK(person.error().sentence ==
        "Oskar's access was ended on 2031-01-04. A keeper can open it again.");
  events.push_back(about(5, PersonAdded{"Oskar", Role::Assistant, {}}));
  CHECK(person_with_badge(fold_people(events), badge_of("Oskar"), today));
}

TEST_CASE("access with a last day holds through that day and no longer") {
  const People people = fold_people({about(1, PersonAdded{"Oskar", Role::Assistant, today})});
  CHECK(person_with_badge(people, badge_of("Oskar"), today));
  const auto after = person_with_badge(people, badge_of("Oskar"), today + std::chrono::days{1});
  REQUIRE_FALSE(after);
  CHECK(after.error().sentence ==
        "Oskar's last day here was " + format_day(today) + ". A keeper can open it again.");
}

TEST_CASE("those who are welcome are listed keepers first") {
  People people = ines_and_oskar();
  apply(people, about(3, PersonAdded{"Aiko", Role::Assistant, {}}));
  apply(people, about(4, PersonAdded{"Zora", Role::Keeper, {}}));
  apply(people, about(5, PersonEnded{"Oskar"}));
  CHECK(names(people.welcome_on(today)) == std::vector<std::string>{"Ines", "Zora", "Aiko"});
}

TEST_CASE("a name is kept tidy and told apart from those that are known") {
  const People people = ines_and_oskar();
  CHECK(new_name(people, "  Jo  Anne ").value() == "Jo Anne");
  CHECK(new_name(people, "Jürgen").value() == "Jürgen");
  CHECK_FALSE(new_name(people, "   "));
  CHECK_FALSE(new_name(people, "a\tb"));
  CHECK_FALSE(new_name(people, std::string(41, 'a')));
  CHECK(new_name(people, "ines").error().kind == ErrorKind::NotNow);
}

TEST_CASE("people are known from the kinds that are read first, in whatever order they come") {
  rc::prop("the roster's kinds suffice and order does not matter", [] {
    auto events = *any_log(30);
    const People whole = fold_people(events);
    auto roster = events;
    std::erase_if(roster, [](const Event& event) {
      return std::ranges::find(roster_kinds(), kind_name(event.details)) == roster_kinds().end();
    });
    std::ranges::reverse(roster);
    RC_ASSERT(fold_people(roster) == whole);
  });
}

#include "core/cover/cover_book.hpp"

#include <algorithm>

#include "core/cover/cover_access.hpp"
#include "core/cover/cover_rules.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

Day june(int day) { return Day{std::chrono::year{2031} / 6 / day}; }

Event room_event(std::int64_t order, Day day, Details details, std::string note = {}) {
  Event event = make_event(order, 0, animal_number(0), std::move(details));
  event.animal.reset();
  event.when = on_day(day, std::chrono::minutes{60});
  event.note = std::move(note);
  return event;
}

CoverBook book_with(const CoverPlanned& planned) {
  return fold_cover({room_event(1, june(1), planned)});
}

Person assistant(const std::string& name, Day added = june(1), std::optional<Day> until = {}) {
  return {name, Role::Assistant, until, on_day(added, std::chrono::minutes{60}), std::nullopt};
}

People staff(const Person& person) {
  People people;
  people.by_name.emplace("Ines", Person{.name = "Ines", .role = Role::Keeper});
  people.by_name.emplace(person.name, person);
  return people;
}

std::string refusal(const CoverBook& book, const CoverPlanned& planned, Day today = june(1)) {
  const auto can = check_cover(book, planned, today);
  return can ? std::string{} : can.error().sentence;
}

}  // namespace

TEST_CASE("a cover holds from its first day to its last, both included") {
  const auto book = book_with({"Noor", june(3), june(8), {}});
  const Cover& cover = book.covers.at(0);
  CHECK_FALSE(cover.holds_on(june(2)));
  CHECK(cover.holds_on(june(3)));
  CHECK(cover.holds_on(june(8)));
  CHECK_FALSE(cover.holds_on(june(9)));
}

TEST_CASE("a keeper who comes back early ends the cover on that day") {
  const auto book = fold_cover({room_event(1, june(1), CoverPlanned{"Noor", june(3), june(8), {}}),
                                room_event(2, june(5), CoverEnded{event_number(1)})});
  CHECK(book.covers.at(0).last_day() == june(5));
  CHECK(book.covers.at(0).holds_on(june(5)));
  CHECK_FALSE(book.covers.at(0).holds_on(june(6)));
}

TEST_CASE("a cover that is ended before it began never holds, and is not in the way") {
  const auto book = fold_cover({room_event(1, june(1), CoverPlanned{"Noor", june(3), june(8), {}}),
                                room_event(2, june(2), CoverEnded{event_number(1)})});
  for (int day = 1; day < 12; ++day) CHECK_FALSE(book.covers.at(0).holds_on(june(day)));
  CHECK(book.on_or_after(june(1)) == nullptr);
  CHECK(refusal(book, {"Ilse", june(3), june(8), {}}, june(2)).empty());
}

TEST_CASE("reversed, past, endless and unnamed covers are refused with a sentence") {
  const CoverBook none;
  CHECK(refusal(none, {"Noor", june(8), june(3), {}}) ==
        "It would end on Tuesday 3 June, before it begins on Sunday 8 June. Nothing was planned; "
        "the earlier day comes first.");
  CHECK(refusal(none, {"Noor", june(3), june(8), {}}, june(9)) ==
        "Sunday 8 June is over already. Nothing was planned.");
  CHECK(refusal(none, {"", june(3), june(8), {}}) == "Say who stands in. Nothing was planned.");
  CHECK(refusal(none, {"Noor", june(3), june(3) + longest_cover, {}}).find("90 days") !=
        std::string::npos);
  CHECK(refusal(none, {"Noor", june(3), june(3), {}}).empty());
}

TEST_CASE("two covers may not share a day and a rack") {
  const auto book = book_with({"Noor", june(3), june(8), {"A", "B"}});
  CHECK(refusal(book, {"Ilse", june(8), june(12), {"B"}}) ==
        "Noor stands in from Tuesday 3 June to Sunday 8 June for rack A and rack B already. "
        "Nothing was planned: choose other days or racks, or end that one.");
  CHECK_FALSE(refusal(book, {"Ilse", june(1), june(30), {}}).empty());
  CHECK(refusal(book, {"Ilse", june(9), june(12), {"B"}}).empty());
  CHECK(refusal(book, {"Ilse", june(3), june(8), {"C"}}).empty());
}

TEST_CASE("a badge hears why it is not its day") {
  const auto book = book_with({"Noor", june(3), june(8), {}});
  CHECK(not_your_days(book, assistant("Noor"), june(2)) ==
        "Your cover begins on Tuesday 3 June. Ask the keeper before you go on.");
  CHECK(not_your_days(book, assistant("Noor"), june(5)).empty());
  CHECK(not_your_days(book, assistant("Noor"), june(9)) ==
        "Your cover ended on Sunday 8 June. Ask the keeper before you go on.");
  CHECK(not_your_days(book, assistant("Ilse"), june(9)).empty());
}

TEST_CASE("access that was given anew after a cover holds, though that cover is over") {
  const auto book = book_with({"Noor", june(3), june(8), {}});
  CHECK_FALSE(not_your_days(book, assistant("Noor", june(5)), june(12)).empty());
  CHECK_FALSE(not_your_days(book, assistant("Noor", june(8)), june(12)).empty());
  CHECK(not_your_days(book, assistant("Noor", june(10)), june(12)).empty());
}

TEST_CASE("a badge is told its days as the keeper reads dates") {
  const auto book = book_with({"Noor", june(3), june(8), {}});
  CHECK(not_your_days(book, assistant("Noor"), june(2), DateStyle::German) ==
        "Your cover begins on Dienstag, 3. Juni. Ask the keeper before you go on.");
}

TEST_CASE("a cover opens the kiosk for its days to whoever has no access yet") {
  const CoverPlanned planned{"Noor", june(3), june(8), {}};
  const PersonAdded until_then{"Noor", Role::Assistant, june(8)};
  CHECK(access_for(staff(assistant("Ilse")), planned, june(1)).value() == until_then);
  CHECK(access_for(staff(assistant("Noor", june(1), june(5))), planned, june(1)).value() ==
        until_then);
  CHECK_FALSE(access_for(staff(assistant("Noor")), planned, june(1)).value());
  CHECK_FALSE(access_for(People{}, planned, june(1)).value());
  CHECK(access_for(staff(assistant("noor")), planned, june(1)).error().kind == ErrorKind::NotNow);
}

TEST_CASE("the access that was given for a cover ends with it") {
  const auto book = book_with({"Noor", june(3), june(8), {}});
  const Cover& cover = book.covers.front();
  const People people = staff(assistant("Noor", june(1), june(8)));
  CHECK(access_after(people, book, cover, june(2)) == Details{PersonEnded{"Noor"}});
  CHECK(access_after(people, book, cover, june(5)) ==
        Details{PersonAdded{"Noor", Role::Assistant, june(5)}});
}

TEST_CASE("access that another cover needs, or that was there before, outlasts a cover") {
  const Event first = room_event(1, june(1), CoverPlanned{"Noor", june(3), june(8), {}});
  const Event second = room_event(2, june(1), CoverPlanned{"Noor", june(20), june(25), {}});
  const auto book = fold_cover({first, second});
  const People until_first = staff(assistant("Noor", june(1), june(8)));
  CHECK_FALSE(access_after(until_first, book, book.covers[0], june(5)));
  const People always = staff(assistant("Noor"));
  CHECK_FALSE(
      access_after(always, book_with({"Noor", june(3), june(8), {}}), book.covers[0], june(5)));
}

TEST_CASE("a clock that was set back a week moves the days, never the records") {
  const auto book = book_with({"Noor", june(3), june(8), {}});
  CHECK(not_your_days(book, assistant("Noor"), june(5) - std::chrono::days{7}) ==
        "Your cover begins on Tuesday 3 June. Ask the keeper before you go on.");
}

TEST_CASE("a contact is replaced by its name and goes with its number") {
  const ContactSet vet{ContactKind::Vet, "Abeba", "111"};
  const ContactSet again{ContactKind::Vet, "Abeba", "222"};
  const ContactSet gone{ContactKind::Vet, "Abeba", ""};
  const ContactSet keeper{ContactKind::Keeper, "Wiebke", "333"};
  const auto two = fold_cover({room_event(1, june(1), vet), room_event(2, june(2), keeper),
                               room_event(3, june(3), again, "Only by day.")});
  REQUIRE(two.contacts.size() == 2);
  CHECK(two.contacts[0].name == "Wiebke");
  CHECK(two.contacts[1].number == "222");
  CHECK(two.contacts[1].when == "Only by day.");
  CHECK(fold_cover({room_event(1, june(1), vet), room_event(2, june(2), gone)}).contacts.empty());
}

TEST_CASE("the book of covers does not depend on the order of the log") {
  rc::prop("any order", [] {
    auto log = *any_log(40);
    const auto book = fold_cover(log);
    std::reverse(log.begin(), log.end());
    RC_ASSERT(fold_cover(log) == book);
  });
}

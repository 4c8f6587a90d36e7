// Out of a log, into an empty one, and out again.

#include <algorithm>

#include "tests/core/interchange/files.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

constexpr int animals = 4;

// A collection as the interchange can say it: animals enter at the beginning of the day they were
// acquired, their records follow, and details are those that have a column.
std::vector<Event> any_records() {
  std::vector<Event> log;
  const auto write = [&](double hour, std::optional<AnimalId> animal, Details details) -> Event& {
    Event event = make_event(static_cast<std::int64_t>(log.size()), hour, {}, std::move(details));
    event.animal = animal;
    log.push_back(std::move(event));
    return log.back();
  };
  for (int i = 0; i < animals; ++i) {
    const int day = *rc::gen::inRange(0, 5);
    auto added = std::get<AnimalAdded>(*rc::gen::suchThat(
        any_details(0), [](const Details& d) { return std::holds_alternative<AnimalAdded>(d); }));
    added.key = "key " + std::to_string(i);
    added.acquired = at_hour(day * 24.0).moment.day();
    added.born.reset();
    write(day * 24.0 - 1, std::nullopt, EnclosureAdded{{"R", std::to_string(i), ""}}).enclosure =
        tub_number(i);
    Event& event = write(day * 24.0 - 1, animal_number(i), added);  // midnight at +01:00
    event.when.precision = Precision::DayOnly;
    event.enclosure = tub_number(i);
  }
  const int size = *rc::gen::inRange(0, 40);
  for (int i = 0; i < size; ++i) {
    const auto order = static_cast<std::int64_t>(log.size());
    Details details = *any_details(order);
    const auto which = animal_number(*rc::gen::inRange(0, animals));
    if (std::holds_alternative<AnimalAdded>(details)) continue;
    if (auto* moved = std::get_if<Rehoused>(&details))
      moved->to = tub_number(*rc::gen::inRange(0, animals));
    if (auto* sexed = std::get_if<Sexed>(&details))
      if (sexed->sex != Sex::Male) sexed->stage = Stage::Unknown;
    if (auto* read = std::get_if<TemperatureRead>(&details)) read->rack.clear();
    if (auto* read = std::get_if<HumidityRead>(&details)) read->rack.clear();
    Event& event = write(*rc::gen::inRange(24 * 5, 24 * 50), which, std::move(details));
    event.by = *rc::gen::element<std::string>("", "Ines");
    event.note = *rc::gen::element<std::string>("", "a, \"b\"\nc", "carapace", "leg span; left");
    if (*rc::gen::arbitrary<bool>()) event.when.precision = Precision::DayOnly;
    if (event.when.precision == Precision::DayOnly)
      event.when = on_day(event.when.moment.day(), event.when.moment.offset);
  }
  return log;
}

// What the files can carry of a collection, with animals under their keys: not ids, labels, rules,
// nor tubs in which nobody lives.
struct Carried {
  std::map<std::string, AnimalState> animals;
  std::map<std::string, Place> places;
  bool operator==(const Carried&) const = default;
};

Carried carried(Collection collection) {
  Carried all;
  for (auto& [id, animal] : collection.animals) {
    if (animal.enclosure) all.places[animal.key] = collection.enclosure(*animal.enclosure)->place;
    animal.id = {};
    all.animals.emplace(animal.key, animal);
  }
  return all;
}

}  // namespace

TEST_CASE("out and in again gives the same collection and the same files") {
  rc::prop("round trip", [] {
    const auto records = any_records();
    Keeper keeper;
    RC_ASSERT(keeper.log.merge(records).has_value());
    const Files files = keeper.export_files();
    Keeper other;
    other.import(files.animals, files.events);
    RC_ASSERT(carried(other.collection()) == carried(keeper.collection()));
    RC_ASSERT(other.export_files() == files);
  });
}

TEST_CASE("what one's own export holds is known when it comes back") {
  rc::prop("nothing is new", [] {
    const auto records = any_records();
    Keeper keeper;
    RC_ASSERT(keeper.log.merge(records).has_value());
    ExportSummary summary;
    const Files files = keeper.export_files(&summary);
    const auto plan = keeper.plan(files.animals, files.events);
    if (!plan) RC_FAIL(plan.error().where + plan.error().sentence);
    RC_ASSERT(plan->drafts.empty());
    RC_ASSERT(plan->animals_known == summary.animals);
    RC_ASSERT(plan->events_known == summary.events);
  });
}

TEST_CASE("whatever a log holds, its export is taken in, and settles") {
  rc::prop("any log", [] {
    Keeper keeper;
    RC_ASSERT(keeper.log.merge(*any_log()).has_value());
    const Files files = keeper.export_files();
    Keeper second;
    second.import(files.animals, files.events);
    const Files again = second.export_files();
    Keeper third;
    third.import(again.animals, again.events);
    RC_ASSERT(third.export_files() == again);
  });
}

TEST_CASE("what has no row is left out and counted") {
  Keeper keeper;
  keeper.import("animal\na\n", std::nullopt);
  Event label = make_event(1, 1, {}, LabelPrinted{});
  label.animal.reset();
  label.enclosure = keeper.animal("a").enclosure;
  Event spare = make_event(2, 1, {}, EnclosureAdded{});
  spare.animal.reset();
  spare.enclosure = tub_number(9);
  REQUIRE(keeper.log.append({label, spare}, {}));
  ExportSummary summary;
  keeper.export_files(&summary);
  CHECK(summary.animals == 1);
  CHECK(summary.events == 0);
  CHECK(summary.left_out ==
        std::map<std::string, std::int64_t>{{"label printed", 1}, {"enclosure added", 1}});
}

TEST_CASE("what was taken back is not exported") {
  Keeper keeper;
  const auto plan = keeper.import("animal\na\n", "when,animal,event\n2034-01-01,a,misted\n");
  Draft undo;
  undo.id = keeper.ids.next_event();
  undo.when.moment = keeper.clock.now();
  undo.details = Retracted{plan.drafts.back().id};
  REQUIRE(keeper.log.append({undo}, {}));
  CHECK(keeper.export_files().events.find("misted") == std::string::npos);
}

TEST_CASE("animals with the same key or none get keys that tell them apart") {
  Keeper keeper;
  for (int i = 0; i < 3; ++i)
    REQUIRE(keeper.log.append(
        {make_event(i, 1, animal_number(i), AnimalAdded{.key = i < 2 ? "twin" : ""})}, {}));
  const Files files = keeper.export_files();
  CHECK(files.animals.find("twin (" + format_uuid(animal_number(0).value) + ")") !=
        std::string::npos);
  CHECK(files.animals.find("\r\n" + format_uuid(animal_number(2).value)) != std::string::npos);
  CHECK(keeper.import(files.animals, files.events).animals_known == 3);
  CHECK(keeper.refusal(std::nullopt, "when,animal,event\n2034-01-01,twin,misted\n")
            .find("Several animals in the log have the key \"twin\"") != std::string::npos);
}

TEST_CASE("the first tub of an animal that moved is not forgotten") {
  Keeper keeper;
  const std::string first{tub_number(1).text()};
  const std::string second{tub_number(2).text()};
  Event added = make_event(1, 0, animal_number(1), AnimalAdded{.key = "a"});
  added.enclosure = tub_number(1);
  Event moved = make_event(2, 50, animal_number(1), Rehoused{tub_number(2)});
  REQUIRE(keeper.log.append({added, moved}, {}));
  const Files files = keeper.export_files();
  CHECK(files.animals.find("a," + second) != std::string::npos);
  CHECK(files.events.find("rehoused,,,,,," + first) < files.events.find("rehoused,,,,,," + second));
  CHECK(files.events.find("rehoused,,,,,," + first) != std::string::npos);
}

#include "core/collection/collection.hpp"

#include <algorithm>

#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

Event add(std::int64_t order, int number, int tub) {
  Event event = make_event(order, static_cast<double>(order), animal_number(number),
                           AnimalAdded{.key = std::string("k") + std::to_string(number)});
  event.enclosure = tub_number(tub);
  return event;
}

bool is_roster_kind(const Event& event) {
  return std::ranges::find(roster_kinds(), kind_name(event.details)) != roster_kinds().end();
}

}  // namespace

TEST_CASE("a tub knows who lives in it") {
  const auto collection = fold_collection(
      {add(1, 1, 1), add(2, 2, 1), make_event(3, 3, animal_number(1), Rehoused{tub_number(2)})});
  CHECK(collection.enclosure(tub_number(1))->residents == std::vector{animal_number(2)});
  CHECK(collection.enclosure(tub_number(2))->residents == std::vector{animal_number(1)});
  CHECK(collection.animal_by_key("k2")->id == animal_number(2));
  CHECK(collection.animal_by_key("nobody") == nullptr);
}

TEST_CASE("the dead are remembered but not at home") {
  const auto collection =
      fold_collection({add(1, 1, 1), make_event(2, 2, animal_number(1), Died{})});
  const auto* tub = collection.enclosure(tub_number(1));
  CHECK(tub->residents.empty());
  CHECK(tub->last_resident == animal_number(1));
}

TEST_CASE("a label is confirmed by the first scan after its last printing") {
  const auto label = [](std::int64_t order, Details details) {
    Event event = make_event(order, static_cast<double>(order), {}, std::move(details));
    event.animal.reset();
    event.enclosure = tub_number(1);
    return event;
  };
  auto collection = fold_collection({label(1, LabelPrinted{}), label(2, LabelConfirmed{})});
  CHECK(collection.enclosure(tub_number(1))->label_confirmed == at_hour(2));
  apply(collection, label(3, LabelPrinted{}));
  CHECK_FALSE(collection.enclosure(tub_number(1))->label_confirmed);
}

TEST_CASE("what was recorded before an animal came counts, as for the animal alone") {
  const auto collection = fold_collection({
      make_event(1, 1, animal_number(1), Offered{Outcome::Took, "cricket"}),
      make_event(2, 2, animal_number(1), Rehoused{tub_number(4)}),
      add(3, 1, 1),
      make_event(4, 4, animal_number(2), Misted{}),
  });
  CHECK(collection.animal(animal_number(1))->offers == 1);
  CHECK(collection.enclosure(tub_number(4))->residents.empty());
  CHECK(collection.enclosure(tub_number(1))->residents == std::vector{animal_number(1)});
  CHECK(collection.animal(animal_number(2)) == nullptr);  // nobody ever added it
}

TEST_CASE("an animal is the same in the collection and alone") {
  rc::prop("every animal of any log", [] {
    auto log = *any_log();
    // Some are added late, as records carried over from paper can be.
    for (Event& event : log)
      if (std::holds_alternative<AnimalAdded>(event.details) && *rc::gen::arbitrary<bool>())
        event.when.moment.utc += std::chrono::hours{*rc::gen::inRange(0, 2000)};
    std::map<AnimalId, std::vector<Event>> alone;
    for (const Event& event : standing(log))
      if (event.animal) alone[*event.animal].push_back(event);
    const auto collection = fold_collection(log);
    for (const auto& [id, events] : alone) {
      const auto animal = fold_animal(events);
      const AnimalState* const known = collection.animal(id);
      RC_ASSERT(animal.has_value() == (known != nullptr));
      if (known != nullptr) RC_ASSERT(*animal == *known);
    }
  });
}

TEST_CASE("two logs merge to the same collection in any order") {
  rc::prop("union of two kiosks' events", [] {
    const auto log = *any_log();
    std::vector<Event> here;
    std::vector<Event> there;
    for (const Event& event : log) (event.kiosk == kiosk_number(1) ? here : there).push_back(event);
    auto one = here;
    one.insert(one.end(), there.begin(), there.end());
    auto other = there;
    other.insert(other.end(), here.begin(), here.end());
    RC_ASSERT(fold_collection(one) == fold_collection(other));
  });
}

TEST_CASE("applying events one by one is the same as folding them all") {
  rc::prop("incremental", [] {
    std::vector<Event> told;
    Collection collection;
    for (const Event& event : standing(*any_log())) {
      // What was written of an animal before it came needs the whole log.
      const bool early = event.animal && collection.animal(*event.animal) == nullptr &&
                         !std::holds_alternative<AnimalAdded>(event.details);
      if (early) continue;
      apply(collection, event);
      told.push_back(event);
    }
    RC_ASSERT(collection == fold_collection(told));
  });
}

TEST_CASE("the roster kinds are enough to know who lives where") {
  rc::prop("roster", [] {
    const auto log = *any_log();
    std::vector<Event> roster;
    std::ranges::copy_if(log, std::back_inserter(roster), is_roster_kind);
    const auto whole = fold_collection(log);
    const auto listed = fold_collection(roster);
    for (const auto& [code, enclosure] : listed.enclosures)
      RC_ASSERT(whole.enclosure(code)->residents == enclosure.residents);
    for (const auto& [id, animal] : whole.animals) {
      RC_ASSERT(listed.animal(id) != nullptr);
      RC_ASSERT(listed.animal(id)->enclosure == animal.enclosure);
      RC_ASSERT(listed.animal(id)->life == animal.life);
    }
  });
}

TEST_CASE("replacing an animal by itself changes nothing") {
  rc::prop("idempotent", [] {
    auto collection = fold_collection(*any_log());
    const auto before = collection;
    for (const auto& [id, animal] : before.animals) replace(collection, animal);
    for (const auto& [code, enclosure] : before.enclosures)
      RC_ASSERT(collection.enclosure(code)->residents == enclosure.residents);
    RC_ASSERT(collection.animals == before.animals);
  });
}

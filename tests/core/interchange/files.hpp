#pragma once
// What the tests of importing and exporting share: a log, a clock, and files as text.

#include "core/collection/collection.hpp"
#include "core/interchange/export.hpp"
#include "core/interchange/import.hpp"
#include "tests/fakes/fixed_clock.hpp"
#include "tests/fakes/memory_log_store.hpp"
#include "tests/generators/events.hpp"

namespace rackside::tests {

struct Files {
  std::string animals;
  std::string events;
  bool operator==(const Files&) const = default;
};

inline const std::string two_animals =
    "animal,species,sex,stage,instar,acquired,rack,shelf,position,note\r\n"
    "op-1,Orphnaecus philippinus,female,juvenile,6,2034-02-01,A,2,14,\"shy, digs\"\r\n"
    "ec-9,Encyocratella olivacea,,sling,,,A,3,1,\r\n";

inline std::string event_row(const std::string& cells) {
  return "when,animal,event,outcome,prey,count,size_mm,sign,value,unit,by,note\n" + cells + "\n";
}

struct Keeper {
  MemoryLogStore log{kiosk_number(1)};
  FixedClock clock{{Instant{Day{std::chrono::year{2035} / 6 / 1}}, std::chrono::minutes{60}}};
  CountingIds ids{1'000'000};

  Result<ImportPlan> plan(const std::optional<std::string>& animals,
                          const std::optional<std::string>& events) {
    std::optional<SourceFile> first;
    std::optional<SourceFile> second;
    if (animals) first = SourceFile{"animals.csv", *animals};
    if (events) second = SourceFile{"events.csv", *events};
    return plan_import(first, second, log, clock, ids);
  }
  ImportPlan import(const std::optional<std::string>& animals,
                    const std::optional<std::string>& events) {
    const auto planned = plan(animals, events);
    if (!planned) FAIL(planned.error().where + ": " + planned.error().sentence);
    REQUIRE(log.append(planned->drafts, clock.now().utc));
    return *planned;
  }
  std::string refusal(const std::optional<std::string>& animals,
                      const std::optional<std::string>& events) {
    const auto planned = plan(animals, events);
    return planned ? "taken" : planned.error().where + ": " + planned.error().sentence;
  }
  Files export_files(ExportSummary* summary = nullptr) {
    Files files;
    const auto done = export_log(
        log, [&](std::string_view text) { files.animals += text; },
        [&](std::string_view text) { files.events += text; });
    REQUIRE(done);
    if (summary != nullptr) *summary = *done;
    return files;
  }
  std::vector<Event> events() {
    std::vector<Event> all;
    REQUIRE(log.read_all([&](Event&& event) { all.push_back(std::move(event)); }));
    return all;
  }
  Collection collection() { return fold_collection(events()); }
  const AnimalState animal(const std::string& key) {
    const Collection all = collection();
    const AnimalState* state = all.animal_by_key(key);
    REQUIRE(state != nullptr);
    return *state;
  }
  /// The details of the last event about `key`.
  Details last(const std::string& key) {
    return log.read_animal(animal(key).id).value().back().details;
  }
};

}  // namespace rackside::tests

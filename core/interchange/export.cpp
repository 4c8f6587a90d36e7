#include "core/interchange/export.hpp"

#include <algorithm>

#include "core/collection/collection.hpp"
#include "core/interchange/animal_row.hpp"
#include "core/interchange/event_row.hpp"
#include "core/interchange/homes.hpp"
#include "core/interchange/known_rows.hpp"

namespace rackside {

using namespace interchange;

namespace {

std::string header(std::span<const Column> columns) {
  std::vector<std::string> names;
  for (const Column& column : columns) names.emplace_back(column.name);
  return csv_row(names);
}

class Export {
 public:
  Export(LogStore& log, const WriteText& animals, const WriteText& events)
      : log_(log), write_animals_(animals), write_events_(events) {
    const auto roster = taken(log.read_kinds(roster_kinds()));
    taken_back_ = taken_back(roster);
    collection_ = fold_collection(roster);
    keys_ = AnimalKeys(collection_);
    for (const Event& event : standing(roster))
      if (event.animal && std::holds_alternative<AnimalAdded>(event.details))
        added_.insert_or_assign(*event.animal, event);
  }

  ExportSummary run() {
    write_animals_(header(animal_columns()));
    for (const auto& [id, added] : added_) write_animal(added);
    write_events_(header(event_columns()));
    // Events come animal by animal, in the order of the animals' ids, as the rows above did.
    auto read = log_.read_all([this](Event&& event) { take(std::move(event)); });
    if (!read) throw Refusal{read.error()};
    write_group();
    return std::move(summary_);
  }

 private:
  void write_animal(const Event& added) {
    const AnimalState& state = *collection_.animal(*added.animal);
    AnimalRow row{.details = std::get<AnimalAdded>(added.details),
                  .enclosure = state.enclosure,
                  .place = {},
                  .note = added.note};
    row.details.key = *keys_.key_of(*added.animal);
    if (state.enclosure) row.place = collection_.enclosure(*state.enclosure)->place;
    write_animals_(csv_row(animal_cells(row)));
    ++summary_.animals;
  }

  void take(Event&& event) {
    if (!group_.empty() && group_.front().animal != event.animal) write_group();
    if (taken_back_.contains(event.id) || std::holds_alternative<Retracted>(event.details)) return;
    group_.push_back(std::move(event));
  }

  // One animal's events, or the room's.
  void write_group() {
    const auto animal = group_.empty() ? std::nullopt : group_.front().animal;
    const auto added = animal ? added_.find(*animal) : added_.end();
    auto home = added == added_.end()
                    ? std::nullopt
                    : first_home(added->second, collection_.animal(*animal)->enclosure);
    for (const Event& event : group_) {
      if (home && home->when.moment.utc <= event.when.moment.utc)
        write_row(std::exchange(home, {}));
      write_row(event);
    }
    if (home) write_row(home);
    group_.clear();
  }

  void write_row(const std::optional<Draft>& event) {
    if (const auto cells = event_cells(*event, keys_)) {
      write_events_(csv_row(*cells));
      ++summary_.events;
    } else if (!is_in_animals_file(*event)) {
      ++summary_.left_out[std::string(kind_name(event->details))];
    }
  }

  [[nodiscard]] bool is_in_animals_file(const Draft& event) const {
    if (std::holds_alternative<AnimalAdded>(event.details))
      return event.animal && added_.contains(*event.animal);
    if (!std::holds_alternative<EnclosureAdded>(event.details) || !event.enclosure) return false;
    return std::ranges::any_of(added_, [&](const auto& entry) {
      return collection_.animal(entry.first)->enclosure == event.enclosure;
    });
  }

  LogStore& log_;
  const WriteText& write_animals_;
  const WriteText& write_events_;
  std::unordered_set<EventId> taken_back_;
  Collection collection_;
  AnimalKeys keys_;
  std::map<AnimalId, Event> added_;
  std::vector<Event> group_;
  ExportSummary summary_;
};

}  // namespace

Result<ExportSummary> export_log(LogStore& log, const WriteText& animals, const WriteText& events) {
  try {
    return Export(log, animals, events).run();
  } catch (const Refusal& refusal) {
    return tl::unexpected(refusal.error);
  }
}

}  // namespace rackside

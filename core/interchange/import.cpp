#include "core/interchange/import.hpp"

#include <algorithm>
#include <set>

#include "core/interchange/known_rows.hpp"
#include "core/interchange/newcomers.hpp"

namespace rackside {

using namespace interchange;

namespace {

class Import {
 public:
  Import(LogStore& log, Clock& clock, IdSource& ids)
      : today_{clock.now(), clock},
        ids_(ids),
        roster_(taken(log.read_kinds(roster_kinds()))),
        collection_(fold_collection(roster_)),
        keys_(collection_),
        newcomers_(roster_, collection_, keys_, log.kiosk(), ids),
        known_rows_(log, collection_, keys_) {
    for (const Event& event : standing(roster_)) homes_.add(event);
  }

  void read_animals(const SourceFile& file) { newcomers_.read(file, today_); }

  void read_events(const SourceFile& file) {
    Table table(file.name, file.text, event_columns());
    while (const auto row = table.next()) {
      Draft event = read_event_row(*row, keys_, today_);
      if (known_rows_.count_off(event)) {
        ++plan_.events_known;
        continue;
      }
      if (const auto* moved = std::get_if<Rehoused>(&event.details))
        newcomers_.make_known(moved->to);
      events_.push_back(std::move(event));
    }
  }

  ImportPlan finish() {
    add_animals();
    add_tubs();
    add_events();
    for (Draft& draft : plan_.drafts) draft.id = ids_.next_event();
    plan_.animals_known = newcomers_.known();
    return std::move(plan_);
  }

 private:
  // When the first row of each animal happened.
  [[nodiscard]] std::map<AnimalId, Moment> first_events() const {
    std::map<AnimalId, Moment> first;
    for (const Draft& event : events_) {
      if (!event.animal) continue;
      Moment& moment = first.try_emplace(*event.animal, event.when.moment).first->second;
      if (event.when.moment.utc < moment.utc) moment = event.when.moment;
    }
    return first;
  }

  [[nodiscard]] When arrival(const Newcomer& animal,
                             const std::map<AnimalId, Moment>& first_events) const {
    const AnimalAdded& details = animal.row.details;
    if (details.acquired) return beginning_of(*details.acquired, today_);
    if (details.born) return beginning_of(*details.born, today_);
    const auto first = first_events.find(animal.id);
    if (first != first_events.end()) return {first->second, Precision::DayOnly};
    return {today_.now, Precision::Exact};
  }

  void add_animals() {
    const auto first = first_events();
    for (const Newcomer& animal : newcomers_.animals()) {
      Draft draft;
      draft.when = arrival(animal, first);
      draft.animal = animal.id;
      draft.enclosure = animal.row.enclosure;
      draft.details = animal.row.details;
      draft.note = animal.row.note;
      homes_.add(draft);
      plan_.drafts.push_back(std::move(draft));
      ++plan_.animals;
    }
  }

  // Before everything else, so that no event names a tub that is not there yet.
  void add_tubs() {
    std::map<Code, When> since;
    const auto use = [&](const Code& tub, const When& when) {
      When& earliest = since.try_emplace(tub, when).first->second;
      if (when.moment.utc < earliest.moment.utc) earliest = when;
    };
    for (const Draft& animal : plan_.drafts) use(*animal.enclosure, animal.when);
    for (const Draft& event : events_)
      if (const auto* moved = std::get_if<Rehoused>(&event.details)) use(moved->to, event.when);
    std::vector<Draft> tubs;
    for (const auto& [code, place] : newcomers_.tubs()) {
      Draft draft;
      draft.when = since.at(code);
      draft.enclosure = code;
      draft.details = EnclosureAdded{place};
      tubs.push_back(std::move(draft));
      ++plan_.tubs;
    }
    plan_.drafts.insert(plan_.drafts.begin(), tubs.begin(), tubs.end());
  }

  void add_events() {
    for (const Draft& event : events_) homes_.add(event);
    for (Draft& event : events_) {
      if (event.animal) event.enclosure = homes_.of(*event.animal, event.when.moment.utc);
      plan_.drafts.push_back(std::move(event));
      ++plan_.events;
    }
  }

  Today today_;
  IdSource& ids_;
  std::vector<Event> roster_;
  Collection collection_;
  AnimalKeys keys_;
  Newcomers newcomers_;
  KnownRows known_rows_;
  Homes homes_;
  std::vector<Draft> events_;
  ImportPlan plan_;
};

}  // namespace

FileKind kind_of_file(std::string_view text) {
  try {
    CsvReader reader("", text);
    CsvRow header;
    if (!reader.next(header)) return FileKind::Animals;
    const bool has_event = std::ranges::any_of(
        header.cells, [](const std::string& cell) { return trimmed(cell) == "event"; });
    return has_event ? FileKind::Events : FileKind::Animals;
  } catch (const Refusal&) {
    return FileKind::Animals;  // whose reading will say what is wrong with it
  }
}

Result<ImportPlan> plan_import(const std::optional<SourceFile>& animals,
                               const std::optional<SourceFile>& events, LogStore& log, Clock& clock,
                               IdSource& ids) {
  try {
    Import import(log, clock, ids);
    if (animals) import.read_animals(*animals);
    if (events) import.read_events(*events);
    return import.finish();
  } catch (const Refusal& refusal) {
    return tl::unexpected(refusal.error);
  }
}

}  // namespace rackside

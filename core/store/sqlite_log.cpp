#include "core/store/sqlite_log.hpp"

#include <fmt/format.h>

#include "core/collection/collection.hpp"
#include "core/store/event_row.hpp"
#include "core/store/log_statements.hpp"
#include "core/store/opening.hpp"
#include "core/store/schema.hpp"

namespace rackside {

using namespace store;

namespace {

Error two_events(std::string_view what) {
  return {ErrorKind::BadInput,
          fmt::format("{} stands for two different events: one of the two logs began as a copy of "
                      "the other and then went its own way. Nothing was taken over.",
                      what),
          {}};
}

}  // namespace

struct SqliteLog::Parts : LogStatements {
  using LogStatements::LogStatements;
};

SqliteLog::SqliteLog(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}
SqliteLog::~SqliteLog() = default;

Result<std::unique_ptr<SqliteLog>> SqliteLog::open(const std::filesystem::path& path, Access access,
                                                   std::chrono::milliseconds patience) {
  return guarded([&] {
    auto parts = std::make_unique<Parts>(open_log_file(path, access, patience));
    return std::unique_ptr<SqliteLog>(new SqliteLog(std::move(parts)));
  });
}

Result<std::vector<Event>> SqliteLog::append(const std::vector<Draft>& drafts, Instant now) {
  return guarded([&] {
    std::vector<Event> events;
    if (drafts.empty()) return events;
    events.reserve(drafts.size());
    Transaction transaction(parts_->database);
    std::int64_t number = parts_->next_number();
    for (const Draft& draft : drafts) {
      Event event{draft};
      event.kiosk = parts_->kiosk;
      event.number = number;
      event.written = now;
      const bool is_new = parts_->write(event);
      number += is_new ? 1 : 0;
      events.push_back(is_new ? std::move(event) : parts_->find(draft.id).value());
    }
    transaction.commit();
    return events;
  });
}

Result<MergeOutcome> SqliteLog::merge(const std::vector<Event>& events) {
  return guarded([&] {
    MergeOutcome outcome;
    if (events.empty()) return outcome;
    Transaction transaction(parts_->database);
    KioskId introduced{};
    for (const Event& event : events) {
      if (event.kiosk != introduced) parts_->introduce(introduced = event.kiosk);
      if (const auto known = parts_->find(event.id)) {
        if (*known != event) throw StoreFailure(two_events("An id"));
        ++outcome.present;
        continue;
      }
      if (parts_->number_is_taken(event))
        throw StoreFailure(two_events(fmt::format("Number {} of a kiosk", event.number)));
      parts_->write(event);
      ++outcome.added;
    }
    transaction.commit();
    return outcome;
  });
}

Result<void> SqliteLog::read_all(const Visit& visit) {
  return guarded([&] {
    Statement select = parts_->database.prepare(select_events("ORDER BY animal, at, id"));
    Rows rows(select);
    while (rows.next()) visit(event_at(select));
  });
}

Result<std::vector<Event>> SqliteLog::read_animal(const AnimalId& animal) {
  return guarded([&] {
    parts_->by_animal.bind(1, animal.value.bytes);
    return all_rows(parts_->by_animal);
  });
}

Result<std::vector<Event>> SqliteLog::read_enclosure(const Code& enclosure) {
  return guarded([&] {
    parts_->by_enclosure.bind(1, enclosure.text());
    return all_rows(parts_->by_enclosure);
  });
}

Result<std::vector<Event>> SqliteLog::read_kinds(const std::vector<std::string_view>& kinds) {
  return guarded([&] {
    if (kinds.empty()) return std::vector<Event>{};
    const bool roster = kinds == roster_kinds();
    std::string condition = roster_condition();
    if (!roster) {
      condition = "kind IN (?";
      for (std::size_t i = 1; i < kinds.size(); ++i) condition += ", ?";
      condition += ")";
    }
    Statement select =
        parts_->database.prepare(select_events(fmt::format("WHERE {} ORDER BY at, id", condition)));
    if (!roster)
      for (std::size_t i = 0; i < kinds.size(); ++i) select.bind(static_cast<int>(i + 1), kinds[i]);
    return all_rows(select);
  });
}

Result<std::vector<Event>> SqliteLog::read_written_after(std::int64_t& position, std::size_t most) {
  return guarded([&] {
    Statement& select = parts_->written_after;
    select.bind(1, position);
    select.bind(2, static_cast<std::int64_t>(most));
    std::vector<Event> events;
    std::int64_t last = position;
    Rows rows(select);
    while (rows.next()) {
      events.push_back(event_at(select));
      last = select.integer(event_column_count);
    }
    position = last;
    return events;
  });
}

KioskId SqliteLog::kiosk() const { return parts_->kiosk; }

Result<void> SqliteLog::tidy() {
  return guarded([&] { parts_->database.run("PRAGMA wal_checkpoint(PASSIVE)"); });
}

}  // namespace rackside

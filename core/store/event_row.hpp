#pragma once
// An event as a row of the table `events`.

#include <string>

#include "core/event/event.hpp"
#include "core/store/database.hpp"

namespace rackside::store {

/// The columns in the order in which `read_event` reads them and `bind_event` binds them.
inline constexpr const char* event_columns =
    "id, kiosk, number, \"by\", at, utc_offset, exact, written, kind, animal, enclosure, details, "
    "note";
inline constexpr int event_column_count = 13;

/// `details` is details_to_json of the event's, and must outlive the statement's run, as the event
/// must.
void bind_event(Statement& insert, const Event& event, const std::string& details);

/// Errors: NewerVersion, BadInput when the row holds something no program of ours wrote.
[[nodiscard]] Result<Event> read_event(const Statement& row);

}  // namespace rackside::store

#pragma once
// An open log with the statements over it, prepared once.

#include <optional>
#include <string>
#include <vector>

#include "core/event/event.hpp"
#include "core/store/database.hpp"

namespace rackside::store {

/// "SELECT the columns of an event FROM events", and `rest`.
[[nodiscard]] std::string select_events(std::string_view rest);
/// The event in the present row of such a statement. Throws StoreFailure.
[[nodiscard]] Event event_at(const Statement& row);
/// Runs such a statement to its end. Throws StoreFailure.
[[nodiscard]] std::vector<Event> all_rows(Statement& select);

/// All throw StoreFailure.
class LogStatements {
 public:
  explicit LogStatements(Database opened);

  /// Whether the event was new; one whose id is there already is not written again.
  bool write(const Event& event);
  /// The number of this kiosk's next event.
  [[nodiscard]] std::int64_t next_number();
  [[nodiscard]] std::optional<Event> find(const EventId& id);
  [[nodiscard]] bool number_is_taken(const Event& event);
  /// Makes a kiosk known, as its events need it.
  void introduce(const KioskId& kiosk) const;

  Database database;
  KioskId kiosk;
  Statement by_animal;      // parameter 1
  Statement by_enclosure;   // parameter 1
  Statement written_after;  // parameters position and how many; the position behind the event

 private:
  Statement insert_;
  Statement last_number_;
  Statement by_id_;
  Statement by_number_;
};

}  // namespace rackside::store

#pragma once
// Which rows of events.csv are in the log already.
//
// A row is known when the log has an event that export would write as the same row. Two equal rows
// are two events (two crickets offered on one day), so rows are counted off one against one. What
// was taken back in the log counts as known: importing the file again does not bring it back.

#include <map>

#include "core/interchange/event_row.hpp"
#include "core/interchange/homes.hpp"
#include "core/log/log_store.hpp"

namespace rackside::interchange {

/// How a failing log is told inside this room.
template <class T>
T taken(Result<T> result) {
  if (!result) throw Refusal{result.error()};
  return *std::move(result);
}

class KnownRows {
 public:
  /// All of them must outlive this. Reads an animal's events when its first row is asked for.
  KnownRows(LogStore& log, const Collection& collection, const AnimalKeys& keys)
      : log_(log), collection_(collection), keys_(keys) {}

  /// Whether `event` is known; if so, it is counted off. Throws Refusal when the log cannot be
  /// read.
  [[nodiscard]] bool count_off(const Draft& event);

 private:
  using Counts = std::map<std::vector<std::string>, int>;

  [[nodiscard]] Counts read(const std::optional<AnimalId>& animal);
  void count(Counts& counts, const Draft& event) const;

  LogStore& log_;
  const Collection& collection_;
  const AnimalKeys& keys_;
  std::map<std::optional<AnimalId>, Counts> counts_;
};

}  // namespace rackside::interchange

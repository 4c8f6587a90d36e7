#pragma once
// One walk along the racks. A round is two events; what was planned follows from the log before the
// first, what is done from the log after it, so a round survives a restart and midnight, and a scan
// out of order is as good as any.

#include <optional>
#include <set>
#include <vector>

#include "core/round/day_plan.hpp"

namespace rackside {

struct Round {
  EventId id;
  KioskId kiosk;
  When started;
  Instant written{};
  std::string rack;  // empty is all of them
  std::optional<When> ended;

  bool operator==(const Round&) const = default;
};

/// The round that was started last at `kiosk`, ended or not. Events in any order, retractions among
/// them: a start that is taken back never was.
[[nodiscard]] std::optional<Round> last_round(std::vector<Event> events, KioskId kiosk);

/// The log as it was when the round began, and what was written since, the round's own events left
/// out. By when events were written: a meal that is entered late for last week was made during this
/// round, and the plan at its start did not know it.
struct RoundLog {
  std::vector<Event> before;
  std::vector<Event> since;
};
[[nodiscard]] RoundLog split_at(const Round& round, std::vector<Event> events);

struct TubProgress {
  AnimalId animal;
  bool done = false;             // its main task is answered
  std::vector<Task> still_open;  // extras of this visit that nobody recorded
  bool operator==(const TubProgress&) const = default;
};

struct Progress {
  std::vector<TubProgress> tubs;  // one a line of plan.due, in the same order
  int done = 0;
  std::optional<std::chrono::minutes> remaining;  // at the pace so far; none before there is one

  [[nodiscard]] int due() const { return static_cast<int>(tubs.size()); }
  /// The animals that are left, in walking order.
  [[nodiscard]] std::vector<AnimalId> left() const;

  bool operator==(const Progress&) const = default;
};

/// Whether `event` answers `task`: an offer is answered by any outcome, and also by seeing
/// something that speaks against it.
[[nodiscard]] bool answers(const Details& event, Task task);

/// How far `plan` has come by the events `since` (in any order, retractions among them). `started`
/// is when the walk began.
[[nodiscard]] Progress progress(const DayPlan& plan, std::vector<Event> since, When started);

}  // namespace rackside

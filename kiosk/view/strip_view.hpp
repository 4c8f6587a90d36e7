#pragma once
// The moult strip: one animal's cycle as a ruled line. Days are counted from the strip's left end.

#include <string>
#include <vector>

#include "core/event/event.hpp"
#include "core/forecast/forecast.hpp"
#include "core/words/date_style.hpp"
#include "kiosk/scene/mark.hpp"

namespace rackside::kiosk {

struct StripMark {
  double day = 0;
  Mark mark = Mark::None;
  bool above = true;  // what it took and what was seen stand above the line, what it refused below
  std::optional<EventId> landed;  // made just now, by this record
  bool operator==(const StripMark&) const = default;
};

/// The forecast: days, ascending, and how dense the probability is there (per day).
struct StripDensity {
  std::vector<double> day;
  std::vector<double> density;
  double q05 = 0, q25 = 0, median = 0, q75 = 0, q95 = 0;
  bool operator==(const StripDensity&) const = default;
};

/// An earlier cycle, begun at day 0.
struct StripCycle {
  double length = 0;
  std::vector<StripMark> marks;
  bool operator==(const StripCycle&) const = default;
};

struct StripView {
  std::string begins;  // "moult 3 Aug" or "came 3 Aug"
  double today = 0;
  double length = 1;  // of the whole strip, days
  std::vector<StripMark> marks;
  std::optional<StripDensity> density;
  std::vector<StripCycle> before;  // the latest first, at most two
  std::string words;               // "moult most likely 3 to 19 June"

  bool operator==(const StripView&) const = default;
};

/// `newest` is the record that was made just now, null where none was. `forecast` and `density` may
/// be null where there is none yet. None without a single event that begins a cycle.
[[nodiscard]] std::optional<StripView> view_strip(const std::vector<Event>& history,
                                                  const Forecast* forecast,
                                                  const MoultDensity* density, const Moment& now,
                                                  DateStyle dates = DateStyle::DayMonth,
                                                  const EventId* newest = nullptr);

}  // namespace rackside::kiosk

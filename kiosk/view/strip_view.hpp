#pragma once
// The moult strip: one animal's cycle as a ruled line. Days are counted from the strip's left end.

#include <string>
#include <vector>

#include "core/climate/warm_days.hpp"
#include "core/collection/animal.hpp"
#include "core/event/event.hpp"
#include "core/forecast/forecast.hpp"
#include "core/words/wording.hpp"
#include "kiosk/scene/mark.hpp"

namespace rackside::kiosk {

struct StripMark {
  double day = 0;
  Mark mark = Mark::None;
  bool above = true;  // what it took and what was seen stand above the line, what it refused below
  std::optional<EventId> landed;  // made just now, by this record
  bool operator==(const StripMark&) const = default;
};

/// Signs seen at one look after the other, from the first to the last of them.
struct StripRun {
  double from = 0;
  double to = 0;
  bool operator==(const StripRun&) const = default;
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

/// How warm it was where it stands, as far as that was read.
struct StripWarmth {
  std::vector<double> day;
  std::vector<double> part;  // 0: the coldest end of the scale, 1: the warmest
  std::string words;         // "air 22 to 27 °C"
  bool operator==(const StripWarmth&) const = default;
};

struct StripView {
  std::string begins;  // "moult 3 Aug" or "came 3 Aug"
  double today = 0;
  double length = 1;  // of the whole strip, days
  std::vector<StripMark> marks;
  std::vector<StripRun> runs;
  std::optional<StripDensity> density;
  std::optional<StripWarmth> warmth;
  std::vector<StripCycle> before;  // the latest first, at most two
  std::string words;               // "moult most likely 3 to 19 June"

  bool operator==(const StripView&) const = default;
};

/// What the strip is made of. Pointers may be null where there is nothing yet.
struct StripFacts {
  const std::vector<Event>& history;
  const Forecast* forecast = nullptr;
  const MoultDensity* density = nullptr;
  Moment now;
  Wording wording;
  const EventId* newest = nullptr;  // the record that was made just now
  const WarmDays* warmth = nullptr;
  std::string rack;  // where it stands
};

/// None without a single event that begins a cycle.
[[nodiscard]] std::optional<StripView> view_strip(const StripFacts& facts);

/// The same for a list: where the animal stands between its last moult and the next. In parts of
/// the strip's width.
struct SmallStrip {
  double today = 0;
  double q05 = 0, q25 = 0, q75 = 0, q95 = 0;
  bool operator==(const SmallStrip&) const = default;
};

/// None where no moult is expected.
[[nodiscard]] std::optional<SmallStrip> small_strip(const AnimalState& animal,
                                                    const Forecast* forecast, const Moment& now);

}  // namespace rackside::kiosk

#pragma once
// One animal's log reduced to what bears on its moults. Everything after it works on this value
// and never sees an event again.

#include <array>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/event/event.hpp"
#include "core/forecast/surroundings.hpp"

namespace rackside {

/// Something a keeper saw or did between moults. Days are those of the clock on the wall, counted
/// with their fraction from 1970-01-01.
struct Observation {
  enum class Kind : std::uint8_t { Offer, Look };

  double day = 0;
  EventId event;
  Kind kind = Kind::Offer;
  Outcome outcome = Outcome::Took;  // of an offer
  SignSet signs;                    // of a look; empty: nothing unusual
  bool unsettled = false;           // rehoused or arrived lately, or kept cold
  bool visit = false;               // counts among Evidence::visits

  bool operator==(const Observation&) const = default;
};

/// A moult on record: it was between `earliest` (the last time somebody would have noticed a shed
/// had there been one) and `latest` (when it was seen, or its shed found).
struct MoultSpan {
  double earliest = 0;
  double latest = 0;
  EventId event;

  [[nodiscard]] double middle() const { return (earliest + latest) / 2; }
  [[nodiscard]] double width() const { return latest - earliest; }
  bool operator==(const MoultSpan&) const = default;
};

struct Evidence {
  AnimalId animal;
  std::string key;
  std::string species;
  Sex sex = Sex::Unknown;
  Stage stage = Stage::Unknown;  // as it came here
  std::optional<int> instar;     // as it came here
  int count = 1;                 // above 1: a group that is kept as one
  double arrived = 0;
  std::optional<double> matured;  // seen to be a mature male
  std::optional<double> ended;    // died or left
  std::vector<Observation> observations;
  std::vector<MoultSpan> moults;
  std::vector<double> visits;  // when a shed lying in the tub would have been noticed
  std::vector<WeekOfWarmth> warmth;
  std::vector<std::string> ignored;  // records that contradict others: which, and why

  bool operator==(const Evidence&) const = default;
};

/// Days on the wall clock since 1970-01-01.
[[nodiscard]] double wall_day(const Moment& moment);

/// What `events`, all about one animal, in any order and with retractions among them, say up to
/// and including `as_of`. None when nothing until then adds the animal.
[[nodiscard]] std::optional<Evidence> gather_evidence(std::vector<Event> events, Instant as_of,
                                                      const Surroundings& surroundings = {});

/// What was known at the end of `day` of an animal whose evidence now is `evidence`, as far as the
/// records themselves go. None when it had not come yet.
[[nodiscard]] std::optional<Evidence> as_it_stood(const Evidence& evidence, double day);

}  // namespace rackside

#pragma once
// What happened while somebody stood in, tub by tub: what was due and done, late or not at all, who
// refused, who moulted, what was flagged, what was eaten. Pure.
//
// What was due on a day is what the kiosk said that morning: the rules asked again with the record
// as it stood then. So a meal that fell away because a shed was found is not held against anybody.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/care/instruction.hpp"
#include "core/care/rule_book.hpp"
#include "core/climate/room_climate.hpp"
#include "core/collection/collection.hpp"
#include "core/cover/cover_book.hpp"
#include "core/forecast/forecast.hpp"

namespace rackside {

enum class Fate { Done, FellAway, NotDone };

/// Something that was due from a day on.
struct DutyRecord {
  Task task = Task::NotDue;
  Day due;
  Fate fate = Fate::NotDone;
  Day settled;  // when it was done or fell away

  [[nodiscard]] int days_late() const { return static_cast<int>((settled - due).count()); }
  bool operator==(const DutyRecord&) const = default;
};

struct FlagRecord {
  Day day;
  std::string words;
  std::string picture;  // a file's name; empty: none
  bool operator==(const FlagRecord&) const = default;
};

struct PreyUsed {
  std::string kind;
  std::optional<Millimetres> size;
  int count = 0;
  bool operator==(const PreyUsed&) const = default;
};

struct TubReturn {
  AnimalId animal;
  std::optional<Code> enclosure;
  Place place;
  std::string name;
  std::vector<DutyRecord> duties;  // in the order in which they were due
  int took = 0;
  int refused = 0;             // or left overnight
  std::optional<Day> moulted;  // seen, or its shed was found
  std::optional<Day> died;
  std::vector<FlagRecord> flags;
  std::vector<Day> fed_against;  // food was offered where none was to be
  std::vector<PreyUsed> eaten;
  std::string then, now;  // what is said of its next moult

  [[nodiscard]] int count(Fate fate) const;
  bool operator==(const TubReturn&) const = default;
};

struct ReturnReport {
  Cover cover;
  Day last;                      // told until here
  std::vector<Day> silent_days;  // nothing was recorded on them
  std::vector<TubReturn> tubs;   // every animal of the cover, in walking order
  std::vector<PreyUsed> prey;    // by kind, then size
  Wording wording;               // how it is told

  [[nodiscard]] int count(Fate fate) const;
  [[nodiscard]] int late() const;  // done, but not on the day
  bool operator==(const ReturnReport&) const = default;
};

/// One animal and what was believed of it.
struct TubPast {
  std::vector<Event> events;        // about it, standing, in the order of happened_before
  std::vector<Forecast> forecasts;  // of each morning; empty: none
  std::optional<Forecast> now;
  CareRules rules;
  RackClimate air;
};

/// `days` are the mornings of the cover. None when the animal was not there.
[[nodiscard]] std::optional<TubReturn> follow_tub(const TubPast& past, std::span<const Moment> days,
                                                  const Moment& now);

/// Puts the tubs together; `recorded` are the days on which anything was written down.
[[nodiscard]] ReturnReport report_return(const Cover& cover, std::vector<TubReturn> tubs,
                                         std::span<const Moment> days,
                                         const std::vector<Day>& recorded);

[[nodiscard]] std::string return_as_text(const ReturnReport& report);
[[nodiscard]] std::string return_as_json(const ReturnReport& report, const Collection& collection);

/// "Offer, due Tue 3 June: done Fri 6 June, 3 days late"
[[nodiscard]] std::string duty_sentence(const DutyRecord& duty,
                                        DateStyle dates = DateStyle::DayMonth);
/// What there is to be told of a tub, a sentence each; empty where all went as planned.
[[nodiscard]] std::vector<std::string> return_sentences(const TubReturn& tub,
                                                        DateStyle dates = DateStyle::DayMonth);
/// The whole in a few sentences.
[[nodiscard]] std::vector<std::string> return_summary(const ReturnReport& report);

}  // namespace rackside

#pragma once
// The plan of an absence: for each of its days what a stand-in does at which tub, which tubs stay
// closed, where a moult may be met, and what else there is to know. Pure data; the words for paper
// and for other programs are made from it.

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/care/rule_book.hpp"
#include "core/climate/room_climate.hpp"
#include "core/collection/collection.hpp"
#include "core/cover/assistant_actions.hpp"
#include "core/cover/assistant_words.hpp"
#include "core/cover/cover_book.hpp"
#include "core/cover/foresee.hpp"
#include "core/cover/moult_window.hpp"

namespace rackside {

/// One animal on one day.
struct CoverLine {
  AnimalId animal;
  std::optional<Code> enclosure;
  Place place;
  std::string name;  // species, or what stands for it
  Duty duty = Duty::Nothing;
  Task task = Task::NotDue;
  std::string words;
  std::vector<std::string> also;
  std::optional<PreyPlan> prey;  // with a meal only
  bool water = false;            // mist and fill
  std::string only;              // what the line depends on; empty: nothing
  std::vector<Action> taps;      // what can come of it
  std::string otherwise;         // what follows if the meal is refused
  std::optional<std::string> caution;
  double p_soft = 0;  // premoult or hardening on that day, as foreseen

  bool operator==(const CoverLine&) const = default;
};

/// Every living animal stands in exactly one of the three lists, each in walking order.
struct CoverDay {
  Day day;
  std::vector<CoverLine> visits;
  std::vector<CoverLine> keep_closed;
  std::vector<CoverLine> nothing;

  bool operator==(const CoverDay&) const = default;
};

/// Something about one tub for the whole of the absence.
struct TubRemark {
  AnimalId animal;
  std::optional<Code> enclosure;
  Place place;
  std::string name;
  std::string sentence;
  bool operator==(const TubRemark&) const = default;
};

/// What can hurt somebody, and where.
struct Danger {
  std::string sentence;
  std::vector<std::string> species;  // in the order of a walk
  bool operator==(const Danger&) const = default;
};

struct CoverPlan {
  Cover cover;
  Moment made;
  std::vector<CoverDay> days;
  std::vector<TubRemark> tubs;       // every tub once, in walking order; `sentence` is empty
  std::vector<TubRemark> moults;     // where one may be met
  std::vector<TubRemark> tub_notes;  // the keeper's words
  std::vector<NoteForCover> notes;   // the keeper's words about racks and everything
  std::vector<Danger> dangers;       // what to beware of
  std::vector<Contact> contacts;
  double margin = 0;  // the rule of that name: for the supplies
  Wording wording;    // how it is told

  bool operator==(const CoverPlan&) const = default;
};

/// What is known on the day a plan is made.
struct KnownNow {
  const Collection& collection;
  const RuleBook& rules;
  const RoomClimate& climate;
  const CoverBook& book;
  const Outlook& outlook;  // reaches to the last day at least
};

/// The days of `outlook` from `from` on; `cover` says which racks, null is all.
[[nodiscard]] std::vector<CoverDay> foresee_days(const KnownNow& known, Day from,
                                                 const Cover* cover);

/// Days gone by are left out of it.
[[nodiscard]] CoverPlan plan_cover(const KnownNow& known, const Cover& cover);

/// Lines of one rack, as they follow each other in a list in walking order.
template <class Line>
struct RackPart {
  std::string rack;
  std::span<const Line> lines;
};
template <class Line>
[[nodiscard]] std::vector<RackPart<Line>> by_rack(const std::vector<Line>& lines) {
  std::vector<RackPart<Line>> parts;
  for (std::size_t begin = 0; begin < lines.size();) {
    std::size_t end = begin;
    while (end < lines.size() && lines[end].place.rack == lines[begin].place.rack) ++end;
    parts.push_back({lines[begin].place.rack, std::span(lines).subspan(begin, end - begin)});
    begin = end;
  }
  return parts;
}

/// Racks of the plan, in walking order.
[[nodiscard]] std::vector<std::string> racks_of(const CoverPlan& plan);

[[nodiscard]] std::string cover_as_text(const CoverPlan& plan, const Collection& collection);
[[nodiscard]] std::string cover_as_json(const CoverPlan& plan, const Collection& collection);

}  // namespace rackside

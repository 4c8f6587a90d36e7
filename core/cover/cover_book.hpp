#pragma once
// Who stands in for the keeper and when, what the keeper wants them to know, and whom they can
// call, as the log has it. Pure.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/event/event.hpp"

namespace rackside {

struct Cover {
  EventId id;
  std::string who;
  Day from;
  Day to;
  std::vector<std::string> racks;  // none is all of them
  std::optional<Day> ended;        // the keeper came back before `to`

  /// Before `from` where it was called off.
  [[nodiscard]] Day last_day() const { return ended && *ended < to ? *ended : to; }
  [[nodiscard]] bool holds_on(Day day) const { return from <= day && day <= last_day(); }
  [[nodiscard]] bool includes(std::string_view rack) const;

  bool operator==(const Cover&) const = default;
};

struct NoteForCover {
  EventId id;
  std::optional<Code> tub;
  std::string rack;  // empty with no tub: about everything
  std::string words;
  bool operator==(const NoteForCover&) const = default;
};

struct Contact {
  ContactKind kind = ContactKind::Keeper;
  std::string name;
  std::string number;
  std::string when;  // in the keeper's words; empty: what is usual for that kind
  bool operator==(const Contact&) const = default;
};

struct CoverBook {
  std::vector<Cover> covers;        // in the order in which they were planned
  std::vector<NoteForCover> notes;  // in the order in which they were written
  std::vector<Contact> contacts;    // keeper, vet, emergency; in each in the order of entry

  bool operator==(const CoverBook&) const = default;

  [[nodiscard]] const Cover* cover(const EventId& id) const;
  /// The one that holds on `day`, or else the next one to come; of `who` where that is not empty.
  [[nodiscard]] const Cover* on_or_after(Day day, std::string_view who = {}) const;
  /// The last one that began on `day` or before.
  [[nodiscard]] const Cover* last_begun(Day day, std::string_view who = {}) const;
};

/// Brings `book` up to date with one standing event.
void apply(CoverBook& book, const Event& event);

/// Drops a note that was taken back.
void forget_note(CoverBook& book, const EventId& note);

/// Events in any order, retractions among them.
[[nodiscard]] CoverBook fold_cover(std::vector<Event> events);

/// The names of the kinds a CoverBook is made of; "retracted" is among them.
[[nodiscard]] const std::vector<std::string_view>& cover_kinds();

/// When to call, where the keeper has not said it.
[[nodiscard]] std::string_view usual_reason_to_call(ContactKind kind);

}  // namespace rackside

#pragma once
// What can happen, one plain struct a kind. A new kind is a struct here, a line in `Details`, a row
// in kind_names.cpp and its two functions in details_json.cpp; the compiler names what is missing.

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/code/code.hpp"
#include "core/event/signs.hpp"
#include "core/values/time.hpp"
#include "core/values/units.hpp"
#include "core/values/uuid.hpp"

namespace rackside {

enum class Sex { Unknown, Female, Male };
enum class Stage { Unknown, Sling, Juvenile, Adult, MatureMale };

/// Where an enclosure stands. Empty text is unknown. Numbers in them sort as numbers.
struct Place {
  std::string rack;
  std::string shelf;
  std::string position;
  bool operator==(const Place&) const = default;
};

// Enclosures and who lives in them -----------------------------------------------------------

/// A new tub (event's enclosure) with its place.
struct EnclosureAdded {
  Place place;
  bool operator==(const EnclosureAdded&) const = default;
};
/// The tub itself was put somewhere else.
struct EnclosureMoved {
  Place place;
  bool operator==(const EnclosureMoved&) const = default;
};
/// A label for this tub came out of a printer (or into a file).
struct LabelPrinted {
  bool operator==(const LabelPrinted&) const = default;
};
/// The printed label was scanned for the first time after printing: it is on its tub.
struct LabelConfirmed {
  bool operator==(const LabelConfirmed&) const = default;
};
/// An animal, or a group that is kept as one (`count` above 1), enters the collection. Its stage
/// and instar are as on the day it was acquired. The event's enclosure is where it lives.
struct AnimalAdded {
  std::string key;  // the keeper's own, unique in the collection
  std::string species;
  std::string common_name;
  Sex sex = Sex::Unknown;
  Stage stage = Stage::Unknown;
  std::optional<int> instar;
  std::optional<Day> born;
  std::optional<Day> acquired;
  std::string source;
  int count = 1;
  bool operator==(const AnimalAdded&) const = default;
};
/// The event's animal now lives in `to`.
struct Rehoused {
  Code to;
  bool operator==(const Rehoused&) const = default;
};
struct Died {
  bool operator==(const Died&) const = default;
};
/// Sold, given away or returned; the note says which.
struct Left {
  bool operator==(const Left&) const = default;
};

// Care ---------------------------------------------------------------------------------------

enum class Outcome { Took, Refused, LeftOvernight };

struct Offered {
  Outcome outcome = Outcome::Took;
  std::string prey;  // "cricket"; empty is unknown
  std::optional<int> count;
  std::optional<Millimetres> size;
  bool operator==(const Offered&) const = default;
};
struct PreyRemoved {
  bool operator==(const PreyRemoved&) const = default;
};
struct Misted {
  bool operator==(const Misted&) const = default;
};
struct WaterFilled {
  bool operator==(const WaterFilled&) const = default;
};

// What was seen ------------------------------------------------------------------------------

/// The keeper looked. No sign means: looked and saw nothing unusual.
struct Looked {
  SignSet signs;
  bool operator==(const Looked&) const = default;
};
/// Seen moulting, or the date is known.
struct Moulted {
  bool operator==(const Moulted&) const = default;
};
/// The moult was some time since somebody last looked.
struct ShedFound {
  bool operator==(const ShedFound&) const = default;
};
struct ShedRemoved {
  bool operator==(const ShedRemoved&) const = default;
};

enum class Measure { LegSpan, Carapace };

struct Measured {
  Measure what = Measure::LegSpan;
  Millimetres length;
  bool operator==(const Measured&) const = default;
};
/// `stage` is MatureMale where that was seen, else Unknown; the note says what by.
struct Sexed {
  Sex sex = Sex::Unknown;
  Stage stage = Stage::Unknown;
  bool operator==(const Sexed&) const = default;
};
struct TemperatureRead {
  Celsius temperature;
  std::string rack;  // when it is the room's; empty when the event has an animal
  bool operator==(const TemperatureRead&) const = default;
};
struct HumidityRead {
  Percent humidity;
  std::string rack;
  bool operator==(const HumidityRead&) const = default;
};
/// Free words, in the event's note.
struct Noted {
  bool operator==(const Noted&) const = default;
};

// Breeding -----------------------------------------------------------------------------------

struct Paired {
  AnimalId with;
  bool operator==(const Paired&) const = default;
};
struct EggSac {
  bool operator==(const EggSac&) const = default;
};
struct Pulled {
  bool operator==(const Pulled&) const = default;
};
struct Counted {
  int count = 0;
  bool operator==(const Counted&) const = default;
};

// How the keeper works -----------------------------------------------------------------------

enum class RuleScope { Collection, Species, Animal };

/// The keeper's own value for a care rule, until a later one. For an animal it is the event's;
/// `species` is filled in for a species only.
struct RuleSet {
  RuleScope scope = RuleScope::Collection;
  std::string species;
  std::string rule;   // its name in the table of rules
  std::string value;  // a number or a word, as the rule has it
  bool operator==(const RuleSet&) const = default;
};
/// Somebody set out to walk along the racks. What was planned follows from the log before this
/// event, what is done from the log after it.
struct RoundStarted {
  std::string rack;  // empty is all of them
  bool operator==(const RoundStarted&) const = default;
};
struct RoundEnded {
  EventId round;  // its RoundStarted
  bool operator==(const RoundEnded&) const = default;
};

// Who works here -----------------------------------------------------------------------------

enum class Role { Assistant, Keeper };

/// From now on `name` may work at the kiosk; it is what stands in Draft::by. For somebody who is
/// known already, the role and the last day become these.
struct PersonAdded {
  std::string name;
  Role role = Role::Assistant;
  std::optional<Day> until;  // the last day of their access; empty: until it is ended
  bool operator==(const PersonAdded&) const = default;
};
/// Their badge opens nothing any more. What they recorded stays.
struct PersonEnded {
  std::string name;
  bool operator==(const PersonEnded&) const = default;
};

enum class Arrival { Badge, Picked };

/// Somebody stands at this kiosk. What follows from it under their name rests on how they came: a
/// name that was picked from the list proves less than a badge.
struct PersonCame {
  std::string name;
  Arrival how = Arrival::Badge;
  bool operator==(const PersonCame&) const = default;
};

// Cover: somebody stands in while the keeper is away --------------------------------------------

/// `who` looks after the collection from the first day to the last, both included.
struct CoverPlanned {
  std::string who;
  Day from;
  Day to;
  std::vector<std::string> racks;  // none is all of them
  bool operator==(const CoverPlanned&) const = default;
};
/// It is over before its last day: the event's day is the last one.
struct CoverEnded {
  EventId cover;  // its CoverPlanned
  bool operator==(const CoverEnded&) const = default;
};
/// The keeper's words for whoever stands in (the event's note), about the event's tub or, where it
/// names none, about a rack. They hold until they are taken back.
struct CoverNote {
  std::string rack;  // empty, and no tub: about everything
  bool operator==(const CoverNote&) const = default;
};

enum class ContactKind { Keeper, Vet, Emergency };

/// Whom to call; the event's note says when. The same kind and name again replaces what was there.
struct ContactSet {
  ContactKind kind = ContactKind::Keeper;
  std::string name;
  std::string number;  // empty: no longer to be called
  bool operator==(const ContactSet&) const = default;
};
/// Somebody saw that something is wrong here and wants the keeper to know; the note says what.
struct Flagged {
  std::string picture;  // a file's name in the folder of pictures beside the log; empty: none
  bool operator==(const Flagged&) const = default;
};

// The log itself -----------------------------------------------------------------------------

/// `target` is taken back. Both stay readable. Only events with an earlier id can be taken back, so
/// that retractions never form a circle; a retraction can itself be taken back.
struct Retracted {
  EventId target;
  bool operator==(const Retracted&) const = default;
};

using Details =
    std::variant<EnclosureAdded, EnclosureMoved, LabelPrinted, LabelConfirmed, AnimalAdded,
                 Rehoused, Died, Left, Offered, PreyRemoved, Misted, WaterFilled, Looked, Moulted,
                 ShedFound, ShedRemoved, Measured, Sexed, TemperatureRead, HumidityRead, Noted,
                 Paired, EggSac, Pulled, Counted, RuleSet, RoundStarted, RoundEnded, PersonAdded,
                 PersonEnded, PersonCame, CoverPlanned, CoverEnded, CoverNote, ContactSet, Flagged,
                 Retracted>;

/// The stable name of a kind as the log stores it: "offered", "shed found".
[[nodiscard]] std::string_view kind_name(const Details& details);

}  // namespace rackside

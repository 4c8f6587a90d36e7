#pragma once
// One animal (or a group kept as one) as its events leave it. A pure fold: the same events give
// the same state, in whatever order they arrived.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/event/event.hpp"

namespace rackside {

/// Looks at most this far apart are one visit to the tub; what was seen in them is seen together.
inline constexpr std::chrono::minutes one_visit{60};

enum class Life { Living, Died, Left };

struct LastOffer {
  Outcome outcome = Outcome::Took;
  When when;
  bool operator==(const LastOffer&) const = default;
};

struct LastMoult {
  When noticed;            // when it was seen, or when the shed was found
  bool date_known = true;  // false: some time before `noticed`, after the look before it
  bool operator==(const LastMoult&) const = default;
};

struct LastMeasure {
  Millimetres length;
  When when;
  bool operator==(const LastMeasure&) const = default;
};

/// What was taken at the last meal, as far as it was written down.
struct Meal {
  std::string prey;
  std::optional<int> count;
  std::optional<Millimetres> size;
  bool operator==(const Meal&) const = default;
};

struct AnimalState {
  AnimalId id;
  std::string key;
  std::string species;
  std::string common_name;
  std::string source;
  Sex sex = Sex::Unknown;
  Stage stage = Stage::Unknown;
  std::optional<int> instar;  // as acquired, plus one for every moult recorded since
  std::optional<Day> born;
  std::optional<Day> acquired;
  int count = 1;
  When added;

  std::optional<Code> enclosure;  // where it lives, or last lived
  std::optional<When> housed;     // since when

  Life life = Life::Living;
  std::optional<When> ended;

  std::optional<LastMoult> last_moult;
  int moults = 0;
  std::optional<LastOffer> last_offer;
  std::optional<When> last_meal;
  Meal meal;  // what it took then
  int refusals_since_meal = 0;
  int offers = 0;                   // ever, and ...
  int refusals = 0;                 // ... how many of them it did not take
  std::optional<When> prey_in_tub;  // prey was left and nobody has taken it out yet
  std::optional<When> last_looked;
  SignSet signs;                          // of the last look since the last moult
  std::optional<When> on_its_back_since;  // first look of those in a row that saw it so
  std::optional<When> shed_in_tub;        // noticed, and nobody has taken it out yet
  std::optional<When> shed_removed;       // the last one that was taken out
  std::optional<When> last_misted;
  std::optional<When> last_watered;
  std::optional<LastMeasure> leg_span;
  std::optional<LastMeasure> carapace;
  std::optional<When> last_sexed;
  std::optional<When> guards_sac_since;  // laid, and not pulled yet

  bool operator==(const AnimalState&) const = default;
};

/// Brings `animal` up to date with one standing event of its own. Events are given in the order of
/// happened_before; an event that is not about an animal changes nothing.
void apply(AnimalState& animal, const Event& event);

/// The state after all of `events`, which may come in any order and hold retractions. None when
/// no standing event adds the animal.
[[nodiscard]] std::optional<AnimalState> fold_animal(std::vector<Event> events);

/// "Poecilotheria miranda" or, where no species was given, the common name, or "unknown species".
[[nodiscard]] std::string display_name(const AnimalState& animal);

}  // namespace rackside

#pragma once
// A keeper's log out of an invented world, together with the truth nobody wrote down.

#include "core/event/event.hpp"
#include "core/forecast/evidence.hpp"
#include "tests/core/forecast/world.hpp"

namespace rackside::tests {

/// Cycles that an animal is given from before it came.
inline constexpr int cycles_before = 2;

struct InventedAnimal {
  Nature nature;
  std::vector<TrueCycle> cycles;  // from before it came until after the log's end
  std::vector<bool> recorded;     // whether the moult that ended the cycle was
  double arrived = 0;
  std::vector<Event> events;

  [[nodiscard]] const TrueCycle& cycle_on(double day) const;
  /// The first true moult after the last one that was on record on `day` (or after the arrival).
  [[nodiscard]] double moult_since_record(double day) const;
};

struct InventedCollection {
  World world;
  std::vector<InventedAnimal> animals;
  std::vector<Event> room;  // temperatures, tubs
  double begins = 0, ends = 0;
};

/// `animals` of several species over `days`, the same for the same `seed`.
[[nodiscard]] InventedCollection invent(const World& world, int animals, double days,
                                        std::uint64_t seed);

/// Draws anew what is one animal's own among its kind: its pace and its appetite.
void give_own_nature(const World& world, Nature& nature, Dice& dice);

/// The moment a wall day stands for, at UTC.
[[nodiscard]] Moment moment_of(double day);

}  // namespace rackside::tests

#pragma once
// A row of animals.csv.

#include "core/event/event.hpp"
#include "core/interchange/dates.hpp"

namespace rackside::interchange {

enum AnimalColumn : std::size_t {
  AnimalKey,
  AnimalEnclosure,
  AnimalSpecies,
  AnimalCommonName,
  AnimalSex,
  AnimalStage,
  AnimalInstar,
  AnimalBorn,
  AnimalAcquired,
  AnimalSource,
  AnimalRack,
  AnimalShelf,
  AnimalPosition,
  AnimalCount,
  AnimalNote,
};

[[nodiscard]] std::span<const Column> animal_columns();

struct AnimalRow {
  AnimalAdded details;
  std::optional<Code> enclosure;
  Place place;
  std::string note;

  bool operator==(const AnimalRow&) const = default;
};

/// Throws Refusal.
[[nodiscard]] AnimalRow read_animal_row(const Row& row, const Today& today);
[[nodiscard]] std::vector<std::string> animal_cells(const AnimalRow& animal);

/// A cell that must hold the code of a tub. Throws Refusal, which ends with `remedy`.
[[nodiscard]] Code read_tub(const Row& row, std::size_t column, const std::string& remedy);

}  // namespace rackside::interchange

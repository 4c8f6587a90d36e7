#include "core/interchange/animal_row.hpp"

#include <fmt/format.h>

#include "core/event/words.hpp"

namespace rackside::interchange {
namespace {

constexpr std::array columns{
    Column{"animal", true}, Column{"enclosure"}, Column{"species"}, Column{"common_name"},
    Column{"sex"},          Column{"stage"},     Column{"instar"},  Column{"born"},
    Column{"acquired"},     Column{"source"},    Column{"rack"},    Column{"shelf"},
    Column{"position"},     Column{"count"},     Column{"note"},
};
static_assert(columns.size() == AnimalNote + 1);

constexpr int most_instars = 99;
constexpr int most_in_a_group = 100'000;

Sex read_sex(const Row& row) {
  const std::string word = row.word(AnimalSex);
  if (word.empty()) return Sex::Unknown;
  const auto sex = sex_from_word(word);
  if (!sex)
    row.refuse(AnimalSex,
               fmt::format("\"{}\" is none of female, male and unknown.", row.text(AnimalSex)));
  return *sex;
}

Stage read_stage(const Row& row) {
  const std::string word = row.word(AnimalStage);
  if (word.empty()) return Stage::Unknown;
  const auto stage = stage_from_word(word);
  if (!stage)
    row.refuse(AnimalStage, fmt::format("\"{}\" is none of sling, juvenile, adult and mature male.",
                                        row.text(AnimalStage)));
  return *stage;
}

}  // namespace

std::span<const Column> animal_columns() { return columns; }

Code read_tub(const Row& row, std::size_t column, const std::string& remedy) {
  const auto code = parse_typed_code(row.text(column));
  if (!code || code->kind() != CodeKind::Enclosure)
    row.refuse(column,
               fmt::format("\"{}\" is not the code of a tub. {}", row.text(column), remedy));
  return *code;
}

AnimalRow read_animal_row(const Row& row, const Today& today) {
  AnimalRow animal{
      .details = {.key = row.text(AnimalKey),
                  .species = row.text(AnimalSpecies),
                  .common_name = row.text(AnimalCommonName),
                  .sex = read_sex(row),
                  .stage = read_stage(row),
                  .instar = row.whole_number(AnimalInstar, 0, most_instars),
                  .born = read_day(row, AnimalBorn, today),
                  .acquired = read_day(row, AnimalAcquired, today),
                  .source = row.text(AnimalSource),
                  .count = row.whole_number(AnimalCount, 1, most_in_a_group).value_or(1)},
      .enclosure = {},
      .place = {row.text(AnimalRack), row.text(AnimalShelf), row.text(AnimalPosition)},
      .note = row.text(AnimalNote)};
  if (trimmed(animal.details.key).empty())
    row.refuse(AnimalKey, "Every animal needs a key of its own.");
  if (!row.word(AnimalEnclosure).empty())
    animal.enclosure =
        read_tub(row, AnimalEnclosure, "Leave the cell empty, and the tub gets a new code.");
  return animal;
}

std::vector<std::string> animal_cells(const AnimalRow& animal) {
  const AnimalAdded& added = animal.details;
  return {added.key,
          animal.enclosure ? std::string(animal.enclosure->text()) : "",
          added.species,
          added.common_name,
          std::string(word_of(added.sex)),
          added.stage == Stage::Unknown ? "" : std::string(word_of(added.stage)),
          added.instar ? std::to_string(*added.instar) : "",
          added.born ? format_day(*added.born) : "",
          added.acquired ? format_day(*added.acquired) : "",
          added.source,
          animal.place.rack,
          animal.place.shelf,
          animal.place.position,
          std::to_string(added.count),
          animal.note};
}

}  // namespace rackside::interchange

#include "core/interchange/newcomers.hpp"

#include <fmt/format.h>

#include "core/collection/place.hpp"
#include "core/interchange/known_rows.hpp"

namespace rackside::interchange {
namespace {

// What the log knows better than an older file: where an animal lives and where its tub stands.
bool may_differ(std::size_t column) {
  return column == AnimalKey || column == AnimalEnclosure || column == AnimalRack ||
         column == AnimalShelf || column == AnimalPosition;
}

}  // namespace

Newcomers::Newcomers(const std::vector<Event>& roster, const Collection& collection,
                     AnimalKeys& keys, KioskId kiosk, IdSource& ids)
    : collection_(collection),
      keys_(keys),
      ids_(ids),
      codes_(CodeKind::Enclosure, kiosk, [this](const Code& code) {
        return collection_.enclosure(code) != nullptr || tubs_.contains(code);
      }) {
  for (const Event& event : standing(roster))
    if (event.animal && std::holds_alternative<AnimalAdded>(event.details))
      added_.insert_or_assign(*event.animal, event);
}

void Newcomers::read(const SourceFile& file, const Today& today) {
  Table table(file.name, file.text, animal_columns());
  while (const auto row = table.next()) read_row(*row, today);
}

void Newcomers::read_row(const Row& row, const Today& today) {
  AnimalRow animal = read_animal_row(row, today);
  const std::string& key = row.text(AnimalKey);
  if (++seen_[key] > 1) row.refuse(AnimalKey, fmt::format("\"{}\" stands there twice.", key));
  if (const auto id = keys_.animal_of(key)) {
    check_same(row, animal, *id);
    ++known_;
    return;
  }
  if (keys_.is_shared(key))
    row.refuse(AnimalKey, fmt::format("Several animals in the log have the key \"{}\".", key));
  house(row, animal);
  const AnimalId id = ids_.next_animal();
  keys_.add(id, key);
  animals_.push_back({id, std::move(animal)});
}

void Newcomers::check_same(const Row& row, const AnimalRow& animal, const AnimalId& id) const {
  const auto found = added_.find(id);
  if (found == added_.end()) return;
  AnimalRow known{.details = std::get<AnimalAdded>(found->second.details),
                  .enclosure = {},
                  .place = {},
                  .note = found->second.note};
  const auto ours = animal_cells(known);
  const auto theirs = animal_cells(animal);
  for (std::size_t column = 0; column < ours.size(); ++column)
    if (!may_differ(column) && !row.empty(column) && ours[column] != theirs[column])
      row.refuse(column, fmt::format("The animal \"{}\" is in the log already, with \"{}\" here. "
                                     "Importing adds records and never changes one.",
                                     row.text(AnimalKey), ours[column]));
}

void Newcomers::house(const Row& row, AnimalRow& animal) {
  if (!animal.enclosure) animal.enclosure = taken(codes_.next());
  const Code tub = *animal.enclosure;
  const EnclosureState* known = collection_.enclosure(tub);
  if (known == nullptr) tubs_.try_emplace(tub);
  if (animal.place == Place{}) return;
  const auto planned = tubs_.find(tub);
  Place stands = known != nullptr ? known->place : Place{};
  if (planned != tubs_.end()) stands = planned->second;
  if (stands == animal.place) return;
  if (stands != Place{})
    row.refuse(AnimalRack, fmt::format("The tub {} stands at {} already. Leave rack, shelf and "
                                       "position empty to keep it there.",
                                       tub.grouped(), format_place(stands)));
  tubs_[tub] = animal.place;  // also a tub of the log that only had its label so far
}

void Newcomers::make_known(const Code& tub) {
  if (collection_.enclosure(tub) == nullptr) tubs_.try_emplace(tub);
}

}  // namespace rackside::interchange

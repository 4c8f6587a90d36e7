#include "labels/cards/name_cards.hpp"

#include <algorithm>

#include "core/code/code_of_name.hpp"
#include "core/collection/place.hpp"

namespace rackside {

std::vector<ShelfName> shelves_in(const Collection& collection) {
  std::vector<Place> places;
  for (const auto& [code, tub] : collection.enclosures)
    if (!tub.place.rack.empty()) places.push_back({tub.place.rack, tub.place.shelf, ""});
  std::ranges::sort(places, walks_before);
  std::vector<ShelfName> shelves;
  for (const Place& place : places)
    if (ShelfName shelf{place.rack, place.shelf};
        std::ranges::find(shelves, shelf) == shelves.end())
      shelves.push_back(std::move(shelf));
  return shelves;
}

LabelContent shelf_label(const ShelfName& shelf) {
  return {.code = code_of_shelf(shelf.rack, shelf.shelf),
          .species = format_place({shelf.rack, shelf.shelf, ""})};
}

LabelContent badge(const std::string& person) {
  return {.code = code_of_name(CodeKind::Person, person), .species = person, .source = "badge"};
}

}  // namespace rackside

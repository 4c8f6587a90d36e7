#include "labels/batch/label_contents.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "core/collection/place.hpp"
#include "labels/label/hazard.hpp"

namespace rackside {
namespace {

struct IsSelected {
  const Collection& collection;
  const EnclosureState& tub;

  bool operator()(const TheseTubs& these) const {
    return std::ranges::find(these.codes, tub.code) != these.codes.end();
  }
  bool operator()(const TubsOnShelf& on) const {
    return tub.place.rack == on.rack && (on.shelf.empty() || tub.place.shelf == on.shelf);
  }
  bool operator()(const TubsOfSource& of) const {
    return std::ranges::any_of(tub.residents, [&](const AnimalId& id) {
      return collection.animal(id)->source == of.source;
    });
  }
  bool operator()(const AllTubs&) const { return true; }
};

Result<void> all_known(const Collection& collection, const TubSelection& selection) {
  const auto* these = std::get_if<TheseTubs>(&selection);
  if (these == nullptr) return {};
  for (const Code& code : these->codes)
    if (collection.enclosure(code) == nullptr)
      return failure(
          ErrorKind::NotFound,
          fmt::format("There is no tub {} in this log. Nothing was printed.", code.grouped()));
  return {};
}

std::vector<const EnclosureState*> in_order(std::vector<const EnclosureState*> tubs,
                                            const TubSelection& selection) {
  if (const auto* these = std::get_if<TheseTubs>(&selection))
    std::ranges::sort(tubs, {}, [&](const EnclosureState* tub) {
      return std::ranges::find(these->codes, tub->code) - these->codes.begin();
    });
  else
    std::ranges::stable_sort(tubs, [](const EnclosureState* a, const EnclosureState* b) {
      return walks_before(a->place, b->place);
    });
  return tubs;
}

}  // namespace

Result<std::vector<Code>> selected_tubs(const Collection& collection, const TubSelection& selection,
                                        StuckOn stuck_on) {
  if (auto known = all_known(collection, selection); !known) return tl::unexpected(known.error());
  std::vector<const EnclosureState*> tubs;
  for (const auto& [code, tub] : collection.enclosures)
    if (std::visit(IsSelected{collection, tub}, selection) &&
        (stuck_on == StuckOn::Either || !tub.label_confirmed))
      tubs.push_back(&tub);
  if (tubs.empty())
    return failure(ErrorKind::NotFound,
                   stuck_on == StuckOn::NotYet
                       ? "Every label of these tubs has been scanned on its tub. There is nothing "
                         "to print."
                       : "No tub fits what you asked for. Nothing was printed.");
  std::vector<Code> codes;
  for (const EnclosureState* tub : in_order(std::move(tubs), selection)) codes.push_back(tub->code);
  return codes;
}

LabelContent label_content(const Collection& collection, const Code& tub) {
  LabelContent content{.code = tub};
  const EnclosureState* enclosure = collection.enclosure(tub);
  if (enclosure == nullptr || enclosure->residents.empty()) return content;
  const AnimalState& animal = *collection.animal(enclosure->residents.front());
  content.species = animal.species;
  content.common_name = animal.common_name;
  content.source = animal.source;
  content.instar = animal.instar;
  content.date = animal.acquired ? animal.acquired : animal.born;
  content.hazard = hazard_of(animal.species);
  return content;
}

std::vector<LabelContent> label_contents(const Collection& collection,
                                         const std::vector<Code>& tubs) {
  std::vector<LabelContent> contents;
  contents.reserve(tubs.size());
  for (const Code& tub : tubs) contents.push_back(label_content(collection, tub));
  return contents;
}

}  // namespace rackside

#include "labels/label/hazard.hpp"

#include <toml++/toml.h>
#include <set>

namespace rackside {

extern const std::string_view built_in_hazards_text;  // hazards.toml

namespace {

struct Genera {
  std::set<std::string, std::less<>> venom;
  std::set<std::string, std::less<>> hairs;
};

std::set<std::string, std::less<>> genera_in(const toml::table& file, const char* list) {
  std::set<std::string, std::less<>> genera;
  for (const auto& row : *file[list].as_array())
    genera.insert(row.as_table()->at("genus").value<std::string>().value());
  return genera;
}

const Genera& genera() {
  static const Genera table = [] {
    const toml::table file = toml::parse(built_in_hazards_text);
    return Genera{genera_in(file, "venom"), genera_in(file, "hairs")};
  }();
  return table;
}

}  // namespace

Hazard hazard_of(std::string_view species) {
  const std::string_view genus = species.substr(0, species.find(' '));
  const bool venom = genera().venom.contains(genus);
  const bool hairs = genera().hairs.contains(genus);
  if (venom) return hairs ? Hazard::VenomAndHairs : Hazard::Venom;
  return hairs ? Hazard::Hairs : Hazard::None;
}

std::string_view hazard_words(Hazard hazard) {
  switch (hazard) {
    case Hazard::None: return "";
    case Hazard::Venom: return "strong venom";
    case Hazard::Hairs: return "irritating hairs";
    case Hazard::VenomAndHairs: return "strong venom, hairs";
  }
  return "";
}

std::string_view hazard_short_words(Hazard hazard) {
  switch (hazard) {
    case Hazard::None: return "";
    case Hazard::Venom: return "venom";
    case Hazard::Hairs: return "hairs";
    case Hazard::VenomAndHairs: return "venom, hairs";
  }
  return "";
}

}  // namespace rackside

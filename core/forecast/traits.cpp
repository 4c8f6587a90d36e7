#include "core/forecast/traits.hpp"

#include <toml++/toml.h>

#include <map>
#include <string>

namespace rackside {

extern const std::string_view species_traits_text;  // the file as it was built in

namespace {

std::optional<bool> flag(const toml::table& table, std::string_view name) {
  return table[name].value<bool>();
}

Traits read_traits(const toml::table& table) {
  Traits traits{.urticating_patch = flag(table, "urticating_patch"),
                .burrows_or_webs = flag(table, "burrows_or_webs"),
                .long_fasts = flag(table, "long_fasts"),
                .arboreal = flag(table, "arboreal")};
  const std::string growth = table["growth"].value_or(std::string{});
  if (growth == "slow") traits.growth = Growth::Slow;
  if (growth == "fast") traits.growth = Growth::Fast;
  return traits;
}

using Named = std::map<std::string, Traits, std::less<>>;

Named read_named(const toml::table& file, std::string_view kind) {
  Named named;
  if (const toml::table* list = file[kind].as_table())
    for (const auto& [name, entry] : *list)
      if (const toml::table* table = entry.as_table())
        named.emplace(std::string{name.str()}, read_traits(*table));
  return named;
}

}  // namespace

Traits traits_of(std::string_view species) {
  static const toml::table file = toml::parse(species_traits_text);
  static const Named by_species = read_named(file, "species");
  static const Named by_genus = read_named(file, "genus");
  if (const auto found = by_species.find(species); found != by_species.end()) return found->second;
  const auto genus = species.substr(0, species.find(' '));
  if (const auto found = by_genus.find(genus); found != by_genus.end()) return found->second;
  return {};
}

}  // namespace rackside

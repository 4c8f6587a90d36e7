#include "core/interchange/animal_keys.hpp"

#include <fmt/format.h>

namespace rackside::interchange {

AnimalKeys::AnimalKeys(const Collection& collection) {
  for (const auto& [id, animal] : collection.animals) ++given_[animal.key];
  for (const auto& [id, animal] : collection.animals) {
    const std::string text = format_uuid(id.value);
    if (animal.key.empty())
      add(id, text);
    else
      add(id, is_shared(animal.key) ? fmt::format("{} ({})", animal.key, text) : animal.key);
  }
}

void AnimalKeys::add(const AnimalId& animal, const std::string& key) {
  keys_.emplace(animal, key);
  animals_.emplace(key, animal);
}

std::optional<std::string> AnimalKeys::key_of(const AnimalId& animal) const {
  const auto found = keys_.find(animal);
  return found == keys_.end() ? std::nullopt : std::optional(found->second);
}

std::optional<AnimalId> AnimalKeys::animal_of(const std::string& key) const {
  const auto found = animals_.find(key);
  return found == animals_.end() ? std::nullopt : std::optional(found->second);
}

bool AnimalKeys::is_shared(const std::string& key) const {
  const auto found = given_.find(key);
  return found != given_.end() && found->second > 1;
}

}  // namespace rackside::interchange

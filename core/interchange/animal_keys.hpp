#pragma once
// The keeper's own keys for animals, made unique. Two kiosks may have given the same key before
// their logs met, and an animal may have none; the files need one for each.

#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "core/collection/collection.hpp"

namespace rackside::interchange {

class AnimalKeys {
 public:
  AnimalKeys() = default;
  /// An animal's own key where it has one that no other has; else the key with the animal's id in
  /// brackets behind it, or the id alone.
  explicit AnimalKeys(const Collection& collection);

  void add(const AnimalId& animal, const std::string& key);

  /// None for an animal that nobody added.
  [[nodiscard]] std::optional<std::string> key_of(const AnimalId& animal) const;
  [[nodiscard]] std::optional<AnimalId> animal_of(const std::string& key) const;
  /// Whether several animals were given `key`, so that it says nothing.
  [[nodiscard]] bool is_shared(const std::string& key) const;

 private:
  std::map<AnimalId, std::string> keys_;
  std::map<std::string, AnimalId> animals_;
  std::map<std::string, int> given_;
};

}  // namespace rackside::interchange

#pragma once
// What is known of a species that bears on reading its signs.

#include <optional>
#include <string_view>

namespace rackside {

enum class Growth { Unknown, Slow, Fast };

struct Traits {
  std::optional<bool> urticating_patch;  // a bald patch can show and turn dark
  std::optional<bool> burrows_or_webs;
  std::optional<bool> long_fasts;
  std::optional<bool> arboreal;
  Growth growth = Growth::Unknown;

  bool operator==(const Traits&) const = default;
};

/// By the scientific name, from species_traits.toml; a genus stands for its species. All unknown
/// for a name that is not there.
[[nodiscard]] Traits traits_of(std::string_view species);

}  // namespace rackside

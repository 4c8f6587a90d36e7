#include "core/care/cautions.hpp"

#include <toml++/toml.h>
#include <algorithm>
#include <cassert>
#include <unordered_map>

namespace rackside {

extern const std::string_view cautions_text;  // cautions.toml

namespace {

using Table = std::unordered_map<std::string, Cautions>;

std::string lower(std::string_view text) {
  std::string result(text);
  std::ranges::transform(result, result.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  });
  return result;
}

std::string genus_of(std::string_view species) {
  const auto start = std::min(species.find_first_not_of(' '), species.size());
  species.remove_prefix(start);
  return lower(species.substr(0, species.find(' ')));
}

Cautions read_genus(const toml::table& row) {
  const std::string hairs = row["hairs"].value_or(std::string{});
  return Cautions{.known = true,
                  .medically_significant = row["venom"].value_or(std::string{}) == "significant",
                  .urticating_hairs = !hairs.empty(),
                  .heavy_urticating_hairs = hairs == "heavy",
                  .fast = row["fast"].value_or(false),
                  .defensive = row["defensive"].value_or(false),
                  .source = row["source"].value_or(std::string{})};
}

Table read_table() {
  Table table;
  for (const auto& [genus, row] : toml::parse(cautions_text)) {
    assert(row.is_table());
    table.emplace(lower(genus.str()), read_genus(*row.as_table()));
  }
  return table;
}

}  // namespace

const Cautions& cautions_for(std::string_view species) {
  static const Table table = read_table();
  static const Cautions unknown;
  const auto found = table.find(genus_of(species));
  return found == table.end() ? unknown : found->second;
}

}  // namespace rackside

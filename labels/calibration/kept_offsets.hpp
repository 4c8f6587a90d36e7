#pragma once
// What was found out about each printer with the calibration page, kept in a small TOML file.

#include <string>
#include <vector>

#include "labels/sheet/stock.hpp"

namespace rackside {

struct KeptOffset {
  std::string printer;  // queue; empty for pages that are printed from a file
  std::string sheet;
  PrintOffset offset;
  bool operator==(const KeptOffset&) const = default;
};

/// Errors: BadInput with the line.
[[nodiscard]] Result<std::vector<KeptOffset>> parse_offsets(std::string_view toml,
                                                            const std::string& file_name);
[[nodiscard]] std::string format_offsets(const std::vector<KeptOffset>& offsets);

/// None kept is no offset.
[[nodiscard]] PrintOffset offset_for(const std::vector<KeptOffset>& offsets,
                                     const std::string& printer, const std::string& sheet);
/// The list with this one in the place of what was kept for the same printer and sheet.
[[nodiscard]] std::vector<KeptOffset> with_offset(std::vector<KeptOffset> offsets,
                                                  const KeptOffset& kept);

}  // namespace rackside

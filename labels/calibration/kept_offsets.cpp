#include "labels/calibration/kept_offsets.hpp"

#include <fmt/format.h>

#include <toml++/toml.h>
#include <algorithm>
#include <sstream>

namespace rackside {

Result<std::vector<KeptOffset>> parse_offsets(std::string_view toml, const std::string& file_name) {
  std::vector<KeptOffset> list;
  try {
    const toml::table file = toml::parse(toml, file_name);
    const auto* rows = file["offset"].as_array();
    if (rows == nullptr) return list;
    for (const auto& node : *rows) {
      const auto* row = node.as_table();
      const auto right = row != nullptr ? (*row)["right"].value<double>() : std::nullopt;
      const auto down = row != nullptr ? (*row)["down"].value<double>() : std::nullopt;
      if (!right || !down)
        return failure(ErrorKind::BadInput, "An offset needs numbers for right and down.",
                       fmt::format("{}, line {}", file_name, node.source().begin.line));
      list.push_back({(*row)["printer"].value_or(std::string{}),
                      (*row)["sheet"].value_or(std::string{}),
                      {*right, *down}});
    }
  } catch (const toml::parse_error& problem) {
    return failure(
        ErrorKind::BadInput,
        fmt::format("The file of print offsets cannot be read: {}.", problem.description()),
        fmt::format("{}, line {}", file_name, problem.source().begin.line));
  }
  return list;
}

std::string format_offsets(const std::vector<KeptOffset>& offsets) {
  std::ostringstream text;
  text << "# Kept by `rackside-labels calibrate --remember`; millimetres.\n";
  for (const KeptOffset& kept : offsets)
    text << "\n[[offset]]\nprinter = " << toml::value<std::string>(kept.printer)
         << "\nsheet = " << toml::value<std::string>(kept.sheet)
         << fmt::format("\nright = {}\ndown = {}\n", kept.offset.right, kept.offset.down);
  return text.str();
}

PrintOffset offset_for(const std::vector<KeptOffset>& offsets, const std::string& printer,
                       const std::string& sheet) {
  for (const KeptOffset& kept : offsets)
    if (kept.printer == printer && kept.sheet == sheet) return kept.offset;
  return {};
}

std::vector<KeptOffset> with_offset(std::vector<KeptOffset> offsets, const KeptOffset& kept) {
  std::erase_if(offsets, [&](const KeptOffset& other) {
    return other.printer == kept.printer && other.sheet == kept.sheet;
  });
  offsets.push_back(kept);
  return offsets;
}

}  // namespace rackside

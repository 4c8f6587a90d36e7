#pragma once
// What a keeper has beside the log for printing: label sheets of their own, and where each printer
// really prints.

#include <filesystem>
#include <vector>

#include "labels/calibration/kept_offsets.hpp"
#include "labels/sheet/stock.hpp"

namespace rackside {

/// A whole file. Errors: NotFound.
[[nodiscard]] Result<std::string> text_of_file(const std::filesystem::path& path);

/// The built-in kinds of sheets and rolls, and those of `label-sheets.toml` in the log's folder if
/// it is there. Errors: as parse_stock.
[[nodiscard]] Result<std::vector<Stock>> stock_beside(const std::filesystem::path& log);

/// `label-offsets.toml` in the log's folder.
[[nodiscard]] std::filesystem::path offsets_beside(const std::filesystem::path& log);
/// What stands there; none when there is no such file. Errors: as parse_offsets.
[[nodiscard]] Result<std::vector<KeptOffset>> read_offsets(const std::filesystem::path& file);

}  // namespace rackside

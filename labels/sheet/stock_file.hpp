#pragma once
// Kinds of stock as a readable file: the built-in one and a user's own beside it.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "labels/sheet/stock.hpp"

namespace rackside {

/// The kinds of stock in a file of the form that stock.toml describes, each one checked. Errors:
/// BadInput with the sheet or the line; one bad sheet refuses the whole file.
[[nodiscard]] Result<std::vector<Stock>> parse_stock(std::string_view toml,
                                                     const std::string& file_name);

/// Those that are built in.
[[nodiscard]] const std::vector<Stock>& built_in_stock();

/// `own` added to `stock`; of two with one name the own one stays.
[[nodiscard]] std::vector<Stock> with_own(std::vector<Stock> stock, const std::vector<Stock>& own);

/// Errors: NotFound, with the names there are.
[[nodiscard]] Result<Stock> stock_named(const std::vector<Stock>& stock, const std::string& name);

}  // namespace rackside

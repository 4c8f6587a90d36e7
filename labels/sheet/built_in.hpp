#pragma once
// The text of stock.toml, put into the program when it is built.

#include <string_view>

namespace rackside {

extern const std::string_view built_in_stock_text;

}  // namespace rackside

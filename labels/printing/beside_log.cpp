#include "labels/printing/beside_log.hpp"

#include <fmt/format.h>

#include <fstream>
#include <sstream>

#include "labels/sheet/stock_file.hpp"

namespace rackside {

Result<std::string> text_of_file(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  if (in) text << in.rdbuf();
  if (!in)
    return failure(ErrorKind::NotFound, fmt::format("\"{}\" cannot be read.", path.string()));
  return text.str();
}

Result<std::vector<Stock>> stock_beside(const std::filesystem::path& log) {
  const auto file = log.parent_path() / "label-sheets.toml";
  if (!std::filesystem::exists(file)) return built_in_stock();
  const auto text = text_of_file(file);
  if (!text) return tl::unexpected(text.error());
  const auto own = parse_stock(*text, file.string());
  if (!own) return tl::unexpected(own.error());
  return with_own(built_in_stock(), *own);
}

std::filesystem::path offsets_beside(const std::filesystem::path& log) {
  return log.parent_path() / "label-offsets.toml";
}

Result<std::vector<KeptOffset>> read_offsets(const std::filesystem::path& file) {
  if (!std::filesystem::exists(file)) return std::vector<KeptOffset>{};
  const auto text = text_of_file(file);
  if (!text) return tl::unexpected(text.error());
  return parse_offsets(*text, file.string());
}

}  // namespace rackside

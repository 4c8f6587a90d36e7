#include "core/file/read_text.hpp"

#include <fstream>
#include <sstream>

namespace rackside {

namespace fs = std::filesystem;

Result<std::string> read_text(const fs::path& path) {
  std::error_code ignored;
  if (!fs::exists(path, ignored))
    return failure(ErrorKind::NotFound, "There is no file " + path.string() + ".");
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  const bool readable = in.is_open() && !fs::is_directory(path, ignored);
  if (readable && in.peek() != std::ifstream::traits_type::eof()) text << in.rdbuf();
  if (!readable || in.bad() || text.fail())
    return failure(ErrorKind::Broken, path.string() + " cannot be read.");
  return std::move(text).str();
}

}  // namespace rackside

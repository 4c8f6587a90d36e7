#pragma once
// A whole file of text.

#include <filesystem>
#include <string>

#include "core/values/result.hpp"

namespace rackside {

/// Errors: NotFound, Broken.
[[nodiscard]] Result<std::string> read_text(const std::filesystem::path& path);

}  // namespace rackside

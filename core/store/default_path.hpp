#pragma once

#include <filesystem>

#include "core/values/result.hpp"

namespace rackside {

/// Where the log is when nobody names a place: `rackside/log.db` in the user's data folder, as the
/// XDG Base Directory Specification (0.8) says: $XDG_DATA_HOME when it is an absolute path, else
/// ~/.local/share. Makes the folder, for this user alone. Errors: NotFound (no home), ReadOnly.
[[nodiscard]] Result<std::filesystem::path> default_log_path();

}  // namespace rackside

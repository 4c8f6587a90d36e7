#pragma once
// The settings as a small file that a person can read and mend.

#include <filesystem>

#include "core/values/result.hpp"
#include "kiosk/settings/settings.hpp"

namespace rackside::kiosk {

/// Beside the log: `log.db` has its settings in `log.settings.toml`.
[[nodiscard]] std::filesystem::path settings_path(const std::filesystem::path& log);

/// What stands in the file, the usual values for all that does not stand there or cannot be meant.
/// No file: all as usual. Errors: BadInput when it is no TOML; the sentence names the line.
[[nodiscard]] Result<Settings> read_settings(const std::filesystem::path& path);

/// Written whole or not at all. Errors: Full, ReadOnly, Broken.
[[nodiscard]] Result<void> write_settings(const std::filesystem::path& path,
                                          const Settings& settings);

}  // namespace rackside::kiosk

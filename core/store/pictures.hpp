#pragma once
// Pictures of what was wrong, in a folder beside the log: `log.db` has them in `log.db.pictures`.

#include <filesystem>

#include "core/values/result.hpp"

namespace rackside {

[[nodiscard]] std::filesystem::path pictures_beside(const std::filesystem::path& log);

/// Copies them to where they belong beside `copy`, a copy of `log` made before: every picture that
/// its events name is there then. Each is read back; one that is there already stays. Gives how
/// many there are. Errors: as read_text and save_file; Broken when a copy is not the same.
[[nodiscard]] Result<int> back_up_pictures(const std::filesystem::path& log,
                                           const std::filesystem::path& copy);

}  // namespace rackside

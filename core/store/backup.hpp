#pragma once
// A whole copy of the log while it is in use.

#include <filesystem>
#include <functional>

#include "core/values/result.hpp"

namespace rackside {

/// Called after each step with the share that is done, 0 to 1. Giving back false stops the copying.
using BackupProgress = std::function<bool(double)>;

enum class BackupEnd { Finished, Stopped };

/// Copies the log at `log` as it stood when the copying began into the new file `to`, in steps that
/// hold up nobody. The copy is read back before it gets its name, so there is never half a backup
/// and a file that was there before stays as it is.
/// Errors: NotFound, NotOurs, ReadOnly, Full, Broken; NotNow when there is a file at `to` already.
[[nodiscard]] Result<BackupEnd> back_up(const std::filesystem::path& log,
                                        const std::filesystem::path& to,
                                        const BackupProgress& progress);

}  // namespace rackside

#pragma once
// Opening a log's file: what to ask of SQLite, and what can be wrong with the file.

#include "core/store/access.hpp"
#include "core/store/database.hpp"
#include "core/values/uuid.hpp"

namespace rackside::store {

/// A file with our tables in it, checked, and made when `access` is Write and there is none.
/// Throws StoreFailure.
[[nodiscard]] Database open_log_file(const std::filesystem::path& path, Access access,
                                     std::chrono::milliseconds patience);

/// The kiosk the file belongs to. Throws StoreFailure.
[[nodiscard]] KioskId kiosk_in(const Database& database);

}  // namespace rackside::store

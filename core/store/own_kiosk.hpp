#pragma once
// A copied log that is to be a kiosk of its own.

#include <filesystem>

#include "core/values/result.hpp"
#include "core/values/uuid.hpp"

namespace rackside {

/// From now on what is written into this log comes from `kiosk`, with numbers from 1. What is in it
/// stays as it is. Two kiosks on copies of one log would otherwise both go on counting as the same
/// one, and could not be merged. Errors: as SqliteLog::open; Busy while a kiosk runs on it.
[[nodiscard]] Result<void> make_own_kiosk(const std::filesystem::path& log, const KioskId& kiosk);

}  // namespace rackside

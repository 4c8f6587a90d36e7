#pragma once
// Keeping pictures of what was wrong.

#include <filesystem>
#include <string>

#include "core/values/result.hpp"
#include "core/values/uuid.hpp"
#include "labels/reader/grey_image.hpp"

namespace rackside::kiosk {

/// Puts the picture there whole or not at all, under the name of the event it goes with, and gives
/// that name back. Errors: as save_file; the sentence says what became of the picture.
[[nodiscard]] Result<std::string> keep_picture(const std::filesystem::path& folder,
                                               const EventId& event, const GreyImage& picture);

}  // namespace rackside::kiosk

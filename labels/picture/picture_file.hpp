#pragma once
// Grey pictures from files: PNG through libpng's simplified interface (Cairo's loader would hold
// four bytes a pixel to give back one), PGM ("P5", 8 and 16 bit) by the few lines it takes.

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "core/values/result.hpp"
#include "labels/reader/grey_image.hpp"

namespace rackside {

/// More than this is no camera's picture, and not worth the memory of a small computer.
inline constexpr std::size_t most_pixels = 64'000'000;

/// All pictures of one file: a PGM file may hold several, one behind the other; a PNG file holds
/// one. Colour becomes luma, transparency lies on white. Told apart by content, not by name.
/// Errors: NotFound, BadInput (neither format, cut off, or larger than `most_pixels`).
[[nodiscard]] Result<std::vector<GreyImage>> load_pictures(const std::filesystem::path& file);

/// The pictures in the bytes of a PGM file. Errors: BadInput.
[[nodiscard]] Result<std::vector<GreyImage>> parse_pgm(std::string_view bytes);

/// The picture as the bytes of a PNG file. Errors: Broken.
[[nodiscard]] Result<std::string> as_png(const GreyImage& image);

/// The picture in the bytes of a PNG file. Errors: BadInput.
[[nodiscard]] Result<GreyImage> parse_png(std::string_view bytes);

}  // namespace rackside

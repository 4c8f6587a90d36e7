#pragma once
// The pages of a PDF file as grey pictures, by Poppler.

#include <filesystem>
#include <functional>

#include "core/values/result.hpp"
#include "labels/label/symbol_size.hpp"
#include "labels/reader/grey_image.hpp"

namespace rackside {

/// Hands each page to `visit`, one after the other. Errors: NotFound, BadInput (no PDF, or one that
/// is damaged or locked).
[[nodiscard]] Result<void> for_each_pdf_page(const std::filesystem::path& file,
                                             Resolution resolution,
                                             const std::function<void(GreyImage&&)>& visit);

/// Whether the file begins as PDF files do.
[[nodiscard]] bool looks_like_pdf(const std::filesystem::path& file);

}  // namespace rackside

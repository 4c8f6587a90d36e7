#pragma once
// The codes in a file: a PNG or PGM picture, or all pages of a PDF.

#include <filesystem>
#include <string>
#include <vector>

#include "core/code/code.hpp"

namespace rackside {

struct FileSightings {
  std::vector<Code> codes;  // each once
  int foreign = 0;          // symbols that are not ours
  int pages = 0;
};

/// Errors: as load_pictures and for_each_pdf_page.
[[nodiscard]] Result<FileSightings> codes_in_file(const std::filesystem::path& file);

/// "tub", "badge", "shelf", "action card: refused".
[[nodiscard]] std::string what_it_is(const Code& code);

}  // namespace rackside

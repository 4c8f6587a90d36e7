#include "labels/read/file_reader.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "core/action/action.hpp"
#include "labels/picture/picture_file.hpp"
#include "labels/read/page_reader.hpp"
#include "labels/read/pdf_pages.hpp"

namespace rackside {
namespace {

// A module of 0.25 mm, the smallest that is printed, has four pixels.
constexpr Resolution reading_resolution{400};

void add(FileSightings& file, const GreyImage& page) {
  const PageSightings seen = read_page(page);
  for (const Code& code : seen.codes)
    if (std::ranges::find(file.codes, code) == file.codes.end()) file.codes.push_back(code);
  file.foreign += seen.foreign;
  ++file.pages;
}

}  // namespace

Result<FileSightings> codes_in_file(const std::filesystem::path& file) {
  FileSightings sightings;
  if (looks_like_pdf(file)) {
    const auto read = for_each_pdf_page(file, reading_resolution,
                                        [&](GreyImage&& page) { add(sightings, page); });
    if (!read) return tl::unexpected(read.error());
    return sightings;
  }
  const auto pictures = load_pictures(file);
  if (!pictures && pictures.error().kind == ErrorKind::BadInput)
    return failure(ErrorKind::BadInput, fmt::format("no PDF, and no picture that can be read: {}",
                                                    pictures.error().sentence));
  if (!pictures) return tl::unexpected(pictures.error());
  for (const GreyImage& picture : *pictures) add(sightings, picture);
  return sightings;
}

std::string what_it_is(const Code& code) {
  const std::string kind(kind_word(code.kind()));
  if (code.kind() != CodeKind::Action) return kind;
  const auto action = action_from_code(code);
  return fmt::format("{}: {}", kind, action ? action_word(*action) : "of a later program");
}

}  // namespace rackside

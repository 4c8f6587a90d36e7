#pragma once
// Pages as files: PDF, SVG and PNG, by Cairo.

#include <cairo.h>

#include <functional>
#include <string>
#include <vector>

#include "core/values/result.hpp"
#include "labels/label/symbol_size.hpp"
#include "labels/reader/grey_image.hpp"

namespace rackside {

/// Pages of one size. `paint` draws page `page` (from 0) on a white canvas in millimetres, its
/// colour set to black.
struct Pages {
  double width = 0;  // millimetres
  double height = 0;
  int count = 0;
  std::function<void(cairo_t* canvas, int page)> paint;
};

enum class FileFormat { Pdf, Svg, Png };

/// By the ending of `path`. Errors: BadInput names the three there are.
[[nodiscard]] Result<FileFormat> format_of(const std::string& path);

/// All pages in one file. Errors: Broken with Cairo's reason.
[[nodiscard]] Result<std::string> pdf_of(const Pages& pages, const std::string& title);
[[nodiscard]] Result<std::string> svg_of(const Pages& pages, int page);
/// One pixel a printer dot.
[[nodiscard]] Result<std::string> png_of(const Pages& pages, int page, Resolution resolution);
[[nodiscard]] Result<GreyImage> picture_of(const Pages& pages, int page, Resolution resolution);

/// What `paint` draws in black on a page of this size, one pixel a printer dot. Cheaper than
/// picture_of, for much drawing: there is no colour.
[[nodiscard]] GreyImage ink_picture(double width, double height, Resolution resolution,
                                    const std::function<void(cairo_t*)>& paint);

/// Writes the pages to `path` in the format of its ending: one file for PDF; for SVG and PNG one a
/// page, "name-2.png" and so on when there are several. Gives back the files written. Errors: those
/// above, and those of save_file.
[[nodiscard]] Result<std::vector<std::string>> save_pages(const Pages& pages,
                                                          const std::string& title,
                                                          const std::string& path,
                                                          Resolution resolution);

}  // namespace rackside

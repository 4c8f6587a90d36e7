#pragma once
// PDF bytes looked at by Poppler, which did not write them.

#include <string>

#include "labels/reader/grey_image.hpp"
#include "labels/sheet/stock.hpp"

namespace rackside::tests {

struct PaperSize {
  int pages = 0;
  double width = 0;  // of the first page, millimetres
  double height = 0;
};

[[nodiscard]] PaperSize paper_size(const std::string& pdf);
/// What stands on a page, line by line from top to bottom.
[[nodiscard]] std::string text_on_paper(const std::string& pdf, int page);
/// The part `box` (millimetres) of a page, `dots_per_inch` pixels an inch.
[[nodiscard]] GreyImage seen_on_paper(const std::string& pdf, int page, const Box& box,
                                      int dots_per_inch);

}  // namespace rackside::tests

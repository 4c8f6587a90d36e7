#include "tests/labels/render/paper.hpp"

#include <cmath>

#include "labels/calibration/calibration_page.hpp"
#include "labels/render/label_sheet.hpp"
#include "labels/render/paint.hpp"
#include "labels/sheet/stock_file.hpp"
#include "tests/frame.hpp"
#include "tests/labels/render/labels_for_tests.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

constexpr int fine = 1200;  // dots an inch
constexpr double tolerance = 0.05;

const PangoText text;

struct Extent {
  double left, top, right, bottom;  // millimetres on the page
};

// Of what is darker than half, in the part `box` of the first page.
Extent ink_in(const std::string& pdf, const Box& box) {
  const GreyImage image = seen_on_paper(pdf, 0, box, fine);
  int left = image.width, top = image.height, right = -1, bottom = -1;
  for (int y = 0; y < image.height; ++y)
    for (int x = 0; x < image.width; ++x)
      if (image.at(x, y) < 128) {
        left = std::min(left, x);
        right = std::max(right, x);
        top = std::min(top, y);
        bottom = std::max(bottom, y);
      }
  const double pixel = 25.4 / fine;
  return {box.x + left * pixel, box.y + top * pixel, box.x + (right + 1) * pixel,
          box.y + (bottom + 1) * pixel};
}

// The number of millimetres in ` width="210mm"`.
double svg_size(const std::string& svg, const std::string& name) {
  const auto at = svg.find(" " + name + "=\"");
  REQUIRE(at != std::string::npos);
  std::size_t read = 0;
  const std::string rest = svg.substr(at + name.size() + 3, 30);
  const double value = std::stod(rest, &read);
  CHECK(rest.substr(read, 2) == "mm");
  return value;
}

LabelSheet full_sheet(const std::string& name, int dpi, PrintOffset offset = {}) {
  const Stock kind = stock(name);
  return plan_sheet(sling_labels(kind.cells()), {kind, {dpi}, offset, 0}, text).value();
}

// From the numbers of the stock alone.
Box symbol_box(const LabelSheet& sheet, const PlannedLabel& label) {
  const Stock& kind = sheet.stock;
  const PlacedSymbol& symbol = label.picture.symbol;
  return {kind.margin_left + label.place.cell % kind.columns * kind.pitch_x + sheet.offset.right +
              symbol.x,
          kind.margin_top + label.place.cell / kind.columns * kind.pitch_y + sheet.offset.down +
              symbol.y,
          symbol.size.side(), symbol.size.side()};
}

// How far a place is from the nearest dot of the printer.
double off_dot(double millimetres, int dpi) {
  const double dots = millimetres * dpi / 25.4;
  return std::abs(dots - std::round(dots)) * 25.4 / dpi;
}

}  // namespace

TEST_CASE("pages have the size of their standard") {
  // ISO 216 and ANSI Letter, as in the stock; a PDF point is 1/72 inch.
  for (const Stock& kind : built_in_stock()) {
    INFO(kind.name);
    const auto sheet = plan_sheet(sling_labels(1), {kind, {300}, {}, 0}, text).value();
    const auto size = paper_size(pdf_of(pages_of(sheet, text), "t").value());
    CHECK(size.pages == 1);
    CHECK(std::abs(size.width - kind.page_width) < tolerance);
    CHECK(std::abs(size.height - kind.page_height) < tolerance);
    const std::string svg = svg_of(pages_of(sheet, text), 0).value();
    CHECK(svg_size(svg, "width") == Approx(kind.page_width).margin(tolerance));
    CHECK(svg_size(svg, "height") == Approx(kind.page_height).margin(tolerance));
  }
}

TEST_CASE("symbols stand where the sheet says, to a twentieth of a millimetre") {
  for (const std::string name : {"a4-5x13", "a4-7x27", "a5-3x9", "letter-3x10"}) {
    const PrintOffset offset{0.7, -0.4};
    const LabelSheet sheet = full_sheet(name, 300, offset);
    const std::string pdf = pdf_of(pages_of(sheet, text), "t").value();
    for (const std::size_t index :
         {std::size_t{0}, sheet.labels.size() / 2, sheet.labels.size() - 1}) {
      const PlannedLabel& label = sheet.labels[index];
      const Box quiet = symbol_box(sheet, label);
      const double module = label.picture.symbol.size.module;
      const Extent ink = ink_in(pdf, quiet);
      INFO(name << " label " << index);
      const double margin = quiet_zone * module;
      const double left = quiet.x + margin;
      const double top = quiet.y + margin;
      const double side = module * label.symbol.side;
      CHECK(std::abs(ink.left - left) < tolerance);
      CHECK(std::abs(ink.top - top) < tolerance);
      CHECK(std::abs(ink.right - (left + side)) < tolerance);
      CHECK(std::abs(ink.bottom - (top + side)) < tolerance);
      // And it begins and ends with a printer's dot, as closely as 1200 dots an inch can tell.
      constexpr double pixel = 25.4 / fine;
      CHECK(off_dot(ink.left, 300) < 0.75 * pixel);
      CHECK(off_dot(ink.top, 300) < 0.75 * pixel);
      CHECK(off_dot(ink.right, 300) < 0.75 * pixel);
    }
  }
}

TEST_CASE("the quiet zone on paper is white, whatever stands beside it") {
  for (const std::string name : {"a4-5x13", "a4-7x27", "a4-cut-8x13", "letter-4x20"}) {
    const LabelSheet sheet = full_sheet(name, 300);
    const std::string pdf = pdf_of(pages_of(sheet, text), "t").value();
    for (std::size_t index = 0; index < sheet.labels.size(); index += 13) {
      const PlannedLabel& label = sheet.labels[index];
      Box quiet = symbol_box(sheet, label);
      const double module = label.picture.symbol.size.module;
      // A hair's breadth inwards: cut lines may touch the outermost edge.
      constexpr double hair = 0.12;
      quiet = {quiet.x + hair, quiet.y + hair, quiet.width - 2 * hair, quiet.height - 2 * hair};
      const Extent ink = ink_in(pdf, quiet);
      INFO(name << " label " << index);
      CHECK(ink.left - quiet.x > (quiet_zone - 0.5) * module - hair);
      CHECK(quiet.x + quiet.width - ink.right > (quiet_zone - 0.5) * module - hair);
      CHECK(ink.top - quiet.y > (quiet_zone - 0.5) * module - hair);
      CHECK(quiet.y + quiet.height - ink.bottom > (quiet_zone - 0.5) * module - hair);
    }
  }
}

TEST_CASE("a hundred millimetres on the calibration page are a hundred millimetres") {
  const Stock kind = stock("a4-5x13");
  const std::string pdf = pdf_of(calibration_page({kind, {300}, {}, 0}, text), "t").value();
  // The long tick of 40 and that of 140, each alone in a narrow strip below the ruler.
  const double y = kind.page_height / 2;
  const auto tick = [&](double at) {
    const Extent ink = ink_in(pdf, {at - 0.4, y + 2.8, 0.8, 0.9});
    return (ink.left + ink.right) / 2;
  };
  CHECK(std::abs(tick(40) - 40) < tolerance);
  CHECK(std::abs(tick(150) - tick(50) - 100) < tolerance);
}

TEST_CASE("words are drawn in black on white within their label") {
  const LabelSheet sheet = full_sheet("a4-5x13", 300);
  const std::string pdf = pdf_of(pages_of(sheet, text), "t").value();
  for (std::size_t index = 0; index < sheet.labels.size(); index += 7) {
    const Box cell = box_of(sheet, sheet.labels[index]);
    // The gutters between the columns stay white.
    const Box gutter{cell.x + cell.width + 0.05, cell.y, 2.3, cell.height};
    if (gutter.x + gutter.width > sheet.stock.page_width - 5) continue;
    const Extent ink = ink_in(pdf, gutter);
    CHECK(ink.right < ink.left);
  }
}

#include "labels/sheet/stock_file.hpp"

#include <algorithm>

#include "tests/frame.hpp"

using namespace rackside;

namespace {

const Stock& built_in(const std::string& name) {
  return *std::ranges::find(built_in_stock(), name, &Stock::name);
}

std::string refusal(std::string_view toml) {
  const auto stock = parse_stock(toml, "mine.toml");
  return stock ? "read" : stock.error().sentence + " [" + stock.error().where + "]";
}

}  // namespace

TEST_CASE("the built-in pages have the sizes of their standards") {
  // ISO 216: A4 210 x 297 mm, A5 148 x 210 mm; Letter 8.5 x 11 inches.
  for (const Stock& stock : built_in_stock()) {
    INFO(stock.name);
    CHECK_FALSE(stock.about.empty());
    if (stock.name.starts_with("a4-")) CHECK((stock.page_width == 210 && stock.page_height == 297));
    if (stock.name.starts_with("a5-")) CHECK((stock.page_width == 148 && stock.page_height == 210));
    if (stock.name.starts_with("letter-"))
      CHECK((stock.page_width == Approx(8.5 * 25.4) && stock.page_height == Approx(11 * 25.4)));
  }
}

TEST_CASE("rolls of 12 to 62 mm are built in, each label a page") {
  std::vector<double> widths;
  for (const Stock& stock : built_in_stock())
    if (stock.shape == StockShape::Roll) {
      CHECK(stock.cells() == 1);
      CHECK((stock.cell_width == stock.page_width && stock.cell_height == stock.page_height));
      CHECK(stock.page_width >= stock.page_height);
      widths.push_back(stock.name == "roll-50" || stock.name == "roll-62" ? stock.page_width
                                                                          : stock.page_height);
    }
  CHECK(*std::ranges::min_element(widths) == 12);
  CHECK(*std::ranges::max_element(widths) == 62);
}

TEST_CASE("a user's own file adds sheets and replaces those of the same name") {
  const auto own = parse_stock(R"(
[[sheet]]
name = "a4-5x13"
page = [210, 297]
grid = [2, 2]
cell = [50, 40]
margin = [10, 10]

[[sheet]]
name = "tape"
roll = 9.5
length = 30
)",
                               "mine.toml");
  REQUIRE(own);
  const auto all = with_own(built_in_stock(), *own);
  CHECK(all.size() == built_in_stock().size() + 1);
  CHECK(stock_named(all, "a4-5x13")->cells() == 4);
  CHECK(stock_named(all, "a4-5x13")->pitch_x == 50);
  CHECK(stock_named(all, "tape")->page_height == 9.5);
  CHECK(stock_named(all, "a4-3x8").value() == built_in("a4-3x8"));
  const auto missing = stock_named(all, "a3");
  REQUIRE_FALSE(missing);
  CHECK(missing.error().sentence.find("tape") != std::string::npos);
}

TEST_CASE("a bad file is refused with its line and its reason") {
  CHECK(refusal("").find("[[sheet]]") != std::string::npos);
  CHECK(refusal("[[sheet]]\nname = \"x\"\npage = [210").find("mine.toml, line") !=
        std::string::npos);
  CHECK(refusal("\n\n[[sheet]]\nname = \"x\"\npage = [210, 297]\ngrid = [3, 3]\ncell = [80, 20]\n"
                "margin = [0, 0]\n")
            .find("30.00 mm beyond the right edge of the page. [mine.toml, line 3]") !=
        std::string::npos);
  CHECK(refusal("[[sheet]]\nname = \"x\"\ncolour = 3\n").find("\"colour\"") != std::string::npos);
  CHECK(refusal("[[sheet]]\npage = [1, 2]\n").find("needs a name") != std::string::npos);
  CHECK(refusal("[[sheet]]\nname = \"x\"\npage = [210, \"wide\"]\n").find("page must be two") !=
        std::string::npos);
  CHECK(refusal("[[sheet]]\nname = \"x\"\nroll = 12\n").find("length must be") !=
        std::string::npos);
}

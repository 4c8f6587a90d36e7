#include "labels/sheet/stock.hpp"

#include <cmath>
#include <limits>

#include "labels/sheet/stock_file.hpp"
#include "tests/frame.hpp"

using namespace rackside;

namespace {

double length(double from, double to) {
  return from + (to - from) * *rc::gen::inRange(0, 1001) / 1000.0;
}

// A grid that fits its page.
Stock fitting_grid() {
  Stock stock{.name = "any",
              .columns = *rc::gen::inRange(1, 12),
              .rows = *rc::gen::inRange(1, 20),
              .cell_width = length(1, 60),
              .cell_height = length(1, 40),
              .margin_left = length(0, 20),
              .margin_top = length(0, 20)};
  stock.pitch_x = stock.cell_width + length(0, 10);
  stock.pitch_y = stock.cell_height + length(0, 10);
  stock.page_width = stock.margin_left + stock.columns * stock.pitch_x;
  stock.page_height = stock.margin_top + stock.rows * stock.pitch_y;
  return stock;
}

// The same with every measure pushed about, so that many do not fit any more.
Stock any_grid() {
  Stock stock = fitting_grid();
  for (double Stock::*measure :
       {&Stock::page_width, &Stock::page_height, &Stock::cell_width, &Stock::cell_height,
        &Stock::margin_left, &Stock::margin_top, &Stock::pitch_x, &Stock::pitch_y})
    if (*rc::gen::inRange(0, 6) == 0) stock.*measure += length(-12, 12);
  if (*rc::gen::inRange(0, 10) == 0) stock.columns += *rc::gen::inRange(-3, 4);
  return stock;
}

bool overlap(const Box& a, const Box& b) {
  constexpr double touch = 0.02;
  return a.x + a.width > b.x + touch && b.x + b.width > a.x + touch &&
         a.y + a.height > b.y + touch && b.y + b.height > a.y + touch;
}

bool is_sound(const Stock& stock) {
  for (int i = 0; i < stock.cells(); ++i) {
    const Box box = cell_box(stock, i);
    if (box.x < 0 || box.y < 0 || box.x + box.width > stock.page_width + 0.02 ||
        box.y + box.height > stock.page_height + 0.02)
      return false;
    for (int j = 0; j < i; ++j)
      if (overlap(box, cell_box(stock, j))) return false;
  }
  return true;
}

Stock small_grid() {
  return {.name = "small",
          .page_width = 100,
          .page_height = 60,
          .columns = 3,
          .rows = 2,
          .cell_width = 30,
          .cell_height = 20,
          .margin_left = 4,
          .margin_top = 5,
          .pitch_x = 31,
          .pitch_y = 25};
}

}  // namespace

TEST_CASE("a grid that is let through has every cell on its page and none over another") {
  int let_through = 0;
  int refused = 0;
  rc::prop("random grids", [&] {
    const auto stock = checked(any_grid());
    ++(stock ? let_through : refused);
    if (stock) RC_ASSERT(is_sound(*stock));
  });
  CHECK(let_through > 5);
  CHECK(refused > 5);
}

TEST_CASE("a grid that fits is let through") {
  rc::prop("grids made to fit", [&] {
    const Stock stock = fitting_grid();
    RC_ASSERT(is_sound(stock));
    RC_ASSERT(checked(stock).has_value());
  });
}

TEST_CASE("all built-in sheets and rolls are sound") {
  REQUIRE(built_in_stock().size() >= 15);
  for (const Stock& stock : built_in_stock()) {
    INFO(stock.name);
    CHECK(is_sound(stock));
  }
}

TEST_CASE("an unusable grid is refused with the measure that does not fit") {
  const auto sentence = [](auto change) {
    Stock stock = small_grid();
    change(stock);
    const auto result = checked(stock);
    return result ? std::string("let through") : result.error().sentence;
  };
  CHECK(sentence([](Stock&) {}) == "let through");
  CHECK(sentence([](Stock& s) { s.page_width = 95; }).find("1.00 mm beyond the right edge") !=
        std::string::npos);
  CHECK(sentence([](Stock& s) { s.rows = 3; }).find("15.00 mm below the page") !=
        std::string::npos);
  CHECK(sentence([](Stock& s) { s.pitch_x = 29; }).find("overlap") != std::string::npos);
  CHECK(sentence([](Stock& s) { s.cell_height = std::nan(""); }) != "let through");
  CHECK(sentence([](Stock& s) { s.page_height = std::numeric_limits<double>::infinity(); }) !=
        "let through");
  CHECK(sentence([](Stock& s) { s.columns = 0; }) != "let through");
  CHECK(sentence([](Stock& s) { s.margin_left = -1; }) != "let through");
}

TEST_CASE("labels start at any cell of a used sheet and go on to the next sheets") {
  const auto places = places_for(small_grid(), 8, 4);
  REQUIRE(places);
  CHECK(*places ==
        std::vector<CellPlace>{{0, 4}, {0, 5}, {1, 0}, {1, 1}, {1, 2}, {1, 3}, {1, 4}, {1, 5}});
  CHECK_FALSE(places_for(small_grid(), 1, 6));
  CHECK_FALSE(places_for(small_grid(), 1, -1));
  CHECK(places_for(small_grid(), 0, 0)->empty());
}

TEST_CASE("a cell is named by number or by row and column") {
  CHECK(parse_cell(small_grid(), "1") == 0);
  CHECK(parse_cell(small_grid(), "6") == 5);
  CHECK(parse_cell(small_grid(), "2,1") == 3);
  for (const std::string wrong : {"0", "7", "", "3,1", "1,4", "x", "1,", "1,2,3", "-1", "2 1"})
    CHECK_FALSE(parse_cell(small_grid(), wrong));
}

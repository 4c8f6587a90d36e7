#include "core/chart/backtest_chart.hpp"

#include <fstream>
#include <sstream>

#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

BacktestReport some_report() {
  BacktestReport report{.days = 3, .forecasts = 40, .moults = 20};
  report.moments = {{"this forecast", 10, 0.5, 0.9}, {"a rule", 25, 0.4, 0.8}};
  report.places.fill(0.1);
  report.calls = 10;
  report.reliability[2] = {0.25, 0.2, 10};
  return report;
}

std::string bytes_of(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  std::ostringstream bytes;
  bytes << in.rdbuf();
  return bytes.str();
}

}  // namespace

TEST_CASE("the picture of a backtest is an SVG or a PNG, by the name of its file") {
  const TemporaryFolder folder;
  REQUIRE(draw_backtest(some_report(), folder / "picture.svg"));
  CHECK(bytes_of(folder / "picture.svg").find("<svg") != std::string::npos);
  REQUIRE(draw_backtest(some_report(), folder / "picture.png"));
  CHECK(bytes_of(folder / "picture.png").substr(1, 3) == "PNG");
  CHECK(draw_backtest(some_report(), folder / "picture.txt").error().kind == ErrorKind::BadInput);
  CHECK_FALSE(draw_backtest(some_report(), folder / "no such folder" / "picture.png"));
}

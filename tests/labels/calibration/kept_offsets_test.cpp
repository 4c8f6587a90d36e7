#include "labels/calibration/kept_offsets.hpp"

#include "tests/frame.hpp"

using namespace rackside;

TEST_CASE("offsets are kept by printer and sheet, and come back from their file") {
  std::vector<KeptOffset> offsets;
  offsets = with_offset(offsets, {"", "a4-5x13", {0.4, -0.25}});
  offsets = with_offset(offsets, {"rack \"room\" \\ 1", "a4-5x13", {1, 2}});
  offsets = with_offset(offsets, {"", "a4-5x13", {0.5, 0}});
  CHECK(offsets.size() == 2);
  const auto read = parse_offsets(format_offsets(offsets), "label-offsets.toml");
  REQUIRE(read);
  CHECK(*read == offsets);
  CHECK(offset_for(*read, "", "a4-5x13") == PrintOffset{0.5, 0});
  CHECK(offset_for(*read, "rack \"room\" \\ 1", "a4-5x13") == PrintOffset{1, 2});
  CHECK(offset_for(*read, "", "a4-3x8") == PrintOffset{});
}

TEST_CASE("a damaged file of offsets is refused with its line") {
  const auto damaged = parse_offsets("# kept\n[[offset]]\nright = 1\n", "o.toml");
  REQUIRE_FALSE(damaged);
  CHECK(damaged.error().where == "o.toml, line 2");
  CHECK_FALSE(parse_offsets("right = ", "o.toml"));
  CHECK(parse_offsets("", "o.toml")->empty());
}

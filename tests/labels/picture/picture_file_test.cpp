#include "labels/picture/picture_file.hpp"

#include <cairo.h>
#include <unistd.h>

#include <fstream>

#include "tests/frame.hpp"

using namespace rackside;
namespace fs = std::filesystem;

namespace {

std::string pgm(const std::string& header, const std::string& samples) { return header + samples; }

// A PNG file written by an independent library: three columns, black, mid grey, white.
fs::path png_by_cairo() {
  const fs::path file =
      fs::temp_directory_path() / ("picture_" + std::to_string(getpid()) + ".png");
  cairo_surface_t* surface = cairo_image_surface_create(CAIRO_FORMAT_RGB24, 3, 2);
  cairo_t* context = cairo_create(surface);
  for (int x = 0; x < 3; ++x) {
    cairo_set_source_rgb(context, x / 2.0, x / 2.0, x / 2.0);
    cairo_rectangle(context, x, 0, 1, 2);
    cairo_fill(context);
  }
  cairo_surface_write_to_png(surface, file.c_str());
  cairo_destroy(context);
  cairo_surface_destroy(surface);
  return file;
}

}  // namespace

TEST_CASE("a PGM picture is read with comments and any blanks in its header") {
  const auto images = parse_pgm(pgm("P5\n# rack 3\n 3\t2 # columns, rows\n255\n", "abcdef"));
  REQUIRE(images);
  REQUIRE(images->size() == 1);
  CHECK(images->front() == GreyImage{3, 2, {'a', 'b', 'c', 'd', 'e', 'f'}});
}

TEST_CASE("a PGM file may hold several pictures") {
  const auto images = parse_pgm("P5 1 1 255\nxP5 1 2 255\nyz\n");
  REQUIRE(images);
  REQUIRE(images->size() == 2);
  CHECK(images->back() == GreyImage{1, 2, {'y', 'z'}});
}

TEST_CASE("PGM samples of other depths are brought to 0 to 255") {
  const auto deep = parse_pgm(std::string("P5 2 1 65535\n\xFF\xFF\x80\x00", 17));
  REQUIRE(deep);
  CHECK(deep->front().pixels == std::vector<std::uint8_t>{255, 127});
  const auto shallow = parse_pgm(std::string("P5 2 1 15\n\x0F\x03", 12));
  REQUIRE(shallow);
  CHECK(shallow->front().pixels == std::vector<std::uint8_t>{255, 51});
}

TEST_CASE("a PGM picture that is cut off, empty or impossibly large is refused") {
  for (const char* bytes : {"", "P5", "P5 2 2 255\nabc", "P5 0 4 255\n", "P5 4 4 0\nx",
                            "P5 999999999 999999999 255\nx", "P6 1 1 255\nabc", "P5 -1 1 255\nx"})
    CHECK(parse_pgm(bytes).error().kind == ErrorKind::BadInput);
}

TEST_CASE("a PNG picture by Cairo comes in as grey") {
  const fs::path file = png_by_cairo();
  const auto images = load_pictures(file);
  fs::remove(file);
  REQUIRE(images);
  CHECK(images->front() == GreyImage{3, 2, {0, 128, 255, 0, 128, 255}});
}

TEST_CASE("a damaged PNG picture is refused, not half read") {
  const fs::path file = png_by_cairo();
  std::ifstream in(file, std::ios::binary);
  std::string bytes(std::istreambuf_iterator<char>(in), {});
  fs::remove(file);
  for (std::size_t cut = 0; cut < bytes.size() - 12; cut += 7)
    CHECK_FALSE(parse_png(std::string_view(bytes).substr(0, cut)));
  const std::size_t samples = bytes.find("IDAT") + 8;
  bytes[samples] = static_cast<char>(~bytes[samples]);
  CHECK_FALSE(parse_png(bytes));
}

TEST_CASE("a file that is not there says so with its name") {
  const auto images = load_pictures("/nowhere/frame.png");
  REQUIRE_FALSE(images);
  CHECK(images.error().kind == ErrorKind::NotFound);
  CHECK(images.error().where == "/nowhere/frame.png");
}

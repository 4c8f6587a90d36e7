#include "labels/reader/frame_reader.hpp"

#include "labels/reader/library_pass.hpp"
#include "labels/reader/symbol_reader.hpp"
#include "tests/frame.hpp"
#include "tests/generators/cells.hpp"
#include "tests/generators/drawn_symbols.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

const TimeLeft always = [] { return true; };

Reading read(const GreyImage& image, const Aim& aim = {}) {
  return FrameReader{}.read(image, aim, always);
}

Modules symbol(const Code& code) { return symbol_of(std::string(code.text()), 1); }

}  // namespace

TEST_CASE("a code is read with its place in the frame") {
  Random random(1);
  const Code code = random_code(random);
  const auto picture = photograph(symbol(code), {.tilt = 30}, random);
  const Reading reading = read(picture.image);
  REQUIRE(reading.code() == code);
  for (std::size_t i = 0; i < 4; ++i)
    CHECK(std::sqrt(distance_squared(reading.sightings[0].corners[i], picture.corners[i])) < 3);
}

TEST_CASE("of two codes the one nearest to the aim is read, and both are counted") {
  Random random(2);
  const Code near = random_code(random), far = random_code(random);
  Sheet sheet(640, 480);
  sheet.put(symbol(near), 260, 180, 4);
  sheet.put(symbol(far), 380, 190, 4);
  const Reading reading = read(sheet.image());
  CHECK(reading.code() == near);
  CHECK(reading.our_codes() == 2);
  CHECK(read(sheet.image(), {0.68, 0.5, 0.9}).code() == far);
}

TEST_CASE("what lies outside the aiming box is not read") {
  Random random(3);
  const Code code = random_code(random);
  Sheet sheet(640, 480);
  sheet.put(symbol(code), 20, 20, 4);
  CHECK_FALSE(read(sheet.image(), {0.5, 0.5, 0.5}).code());
  CHECK(read(sheet.image(), {0.1, 0.15, 0.5}).code() == code);
}

TEST_CASE("a sheet full of labels does not keep the aimed one from being read at once") {
  Random random(4);
  Sheet sheet(1920, 1080);
  std::optional<Code> aimed;
  for (int row = 0; row < 10; ++row)
    for (int column = 0; column < 19; ++column) {
      const Code code = random_code(random);
      sheet.put(symbol(code), 10 + column * 100, 20 + row * 105, 3);
      if (row == 5 && column == 9) aimed = code;
    }
  // Its middle is the frame's, but for some pixels; the cheap way alone must do.
  int questions = 0;
  const Reading reading = FrameReader{}.read(sheet.image(), {}, [&] { return ++questions < 250; });
  CHECK(reading.code() == aimed);
  CHECK(reading.our_codes() >= 2);
}

TEST_CASE("a web address, binary and an empty text are strangers, and their content is dropped") {
  for (const std::string text : {"HTTPS://TUBS.EXAMPLE/7", "X", "\x01\x02\xFF\xFE"}) {
    const Reading reading = read(drawn(symbol_of(text, 1), 5));
    CHECK_FALSE(reading.code());
    REQUIRE(reading.sightings.size() == 1);
    CHECK(reading.sightings[0].code.error().kind == ErrorKind::NotOurs);
    CHECK(reading.sightings[0].code.error().sentence.find(text) == std::string::npos);
  }
}

TEST_CASE("a code whose check character does not fit is refused with its own sentence") {
  const Reading reading = read(drawn(symbol_of("T0000001", 1), 5));
  CHECK_FALSE(reading.code());
  REQUIRE(reading.sightings.size() == 1);
  CHECK(reading.sightings[0].code.error().kind == ErrorKind::BadInput);
}

TEST_CASE("a symbol with valid error correction around a cut bit stream reads as nothing") {
  const GreyImage image = drawn(cut_bit_stream(), 5);
  CHECK(library_pass(image, 4).empty());
  CHECK(read(image).sightings.empty());
  CHECK_FALSE(read(image).code());
}

TEST_CASE("the same drawing with a whole bit stream is read, so that the cut is what stops it") {
  // "AC-42" (the standard's own example of alphanumeric mode, 7.4.4), padded.
  const GreyImage image = drawn(symbol_around({0b00100000, 0b00101001, 0b11001110, 0b11100111,
                                               0b00100001, 0, 0xEC, 0x11, 0xEC}),
                                5);
  REQUIRE(library_pass(image, 4).size() == 1);
}

TEST_CASE("a mirrored symbol reads as itself or not at all, an inverted one not at all") {
  Random random(5);
  for (int i = 0; i < 20; ++i) {
    const Code code = random_code(random);
    const auto seen = read(photograph(mirrored(symbol(code)), {}, random).image).code();
    CHECK((!seen || seen == code));
    CHECK_FALSE(read(photograph(inverted(symbol(code)), {}, random).image).code());
  }
}

TEST_CASE("with little time a frame the ways take turns until all were tried") {
  // A label that the cheap ways miss is read within a few frames all the same.
  Random random(6);
  Scene scene = tub_in_hand(2.5, 1);
  int read_late = 0, read_at_once = 0;
  for (int i = 0; i < 20; ++i) {
    const Code code = random_code(random);
    const auto picture = photograph(symbol(code), scene, random);
    FrameReader reader;
    for (int frame = 0; frame < 12; ++frame) {
      int questions = 0;
      const auto seen = reader.read(picture.image, {}, [&] { return ++questions < 20; }).code();
      if (seen != code) continue;
      (frame == 0 ? read_at_once : read_late) += 1;
      break;
    }
  }
  CHECK(read_at_once + read_late >= 10);
  CHECK(read_late >= 2);
}

TEST_CASE("frames too small or empty read as nothing") {
  CHECK_FALSE(read({}).code());
  CHECK_FALSE(read({1, 1, {0}}).code());
  CHECK_FALSE(read({2, 2, {0, 1, 2, 3}}).code());
  CHECK_FALSE(read({7, 3, std::vector<std::uint8_t>(21, 9)}).code());
}

TEST_CASE("a still picture is read in every way when a plain pass finds nothing in it") {
  Random random(10);
  const Code code = random_code(random);
  const auto picture = photograph(symbol(code), {.contrast = 30}, random);
  CHECK(read_symbols_plainly(picture.image).empty());
  const auto sightings = read_symbols(picture.image);
  REQUIRE(sightings.size() == 1);
  CHECK(sightings[0].code == code);
}

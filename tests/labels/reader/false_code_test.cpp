// A small part of the run of a million that tests/bench/reader_false_codes makes.

#include "labels/reader/frame_reader.hpp"
#include "tests/frame.hpp"
#include "tests/generators/rubbish.hpp"

using namespace rackside;
using namespace rackside::tests;

TEST_CASE("no code is read that is not there") {
  Random random(20310718);
  for (int i = 0; i < 30 * rubbish_kinds; ++i) {
    const auto picture = rubbish(static_cast<Rubbish>(i % rubbish_kinds), random);
    const auto code = FrameReader{}.read(picture.image, {}, [] { return true; }).code();
    INFO("picture " << i << " of kind " << i % rubbish_kinds);
    CHECK((!code || code == picture.code));
  }
}

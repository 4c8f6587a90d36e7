// Looks for codes where there are none.
//
//   reader_false_codes [FRAMES, default 1000000] [SEED]
//
// Each picture is shown as a camera would show it, for ten frames: with fresh noise and in every
// quarter turn; the reader has 3 ms of processor a frame for these small pictures and lets its ways
// take turns, as in the kiosk. Prints how often each kind of picture gave a code that is not in it
// (there should be none), and how many damaged labels were read all the same.

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>

#include "labels/reader/frame_reader.hpp"
#include "tests/bench/processor_time.hpp"
#include "tests/generators/rubbish.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

constexpr std::array names{"noise",  "finders around chance", "print",       "bars",
                           "matrix", "foreign labels",        "nearly ours", "damaged labels"};

constexpr int frames_each = 10;
constexpr double budget = 3;  // milliseconds

// A quarter turn and some noise more: shown again by a hand and a sensor.
GreyImage shown_again(const GreyImage& image, Random& random) {
  GreyImage turned{image.height, image.width, image.pixels};
  const int noise = 1 + static_cast<int>(random() % 16);
  std::uint64_t bits = random();
  for (int y = 0; y < turned.height; ++y)
    for (int x = 0; x < turned.width; ++x) {
      bits = bits * 6364136223846793005u + 1442695040888963407u;
      const int level =
          image.at(y, image.height - 1 - x) + static_cast<int>(bits >> 40) % noise - noise / 2;
      turned.pixels[static_cast<std::size_t>(y * turned.width + x)] =
          static_cast<std::uint8_t>(std::clamp(level, 0, 255));
    }
  return turned;
}

struct Tally {
  long frames = 0, wrong = 0, right = 0;
};

void print(const std::array<Tally, rubbish_kinds>& tallies) {
  std::printf("%-22s %10s %10s %10s\n", "pictures of", "shown", "false", "read");
  for (std::size_t kind = 0; kind < tallies.size(); ++kind)
    std::printf("%-22s %10ld %10ld %10ld\n", names[kind], tallies[kind].frames, tallies[kind].wrong,
                tallies[kind].right);
  std::fflush(stdout);
}

}  // namespace

int main(int count, char** words) {
  const long frames = count > 1 ? std::atol(words[1]) : 1'000'000;
  Random random(count > 2 ? std::strtoull(words[2], nullptr, 10) : 1);
  std::array<Tally, rubbish_kinds> tallies;
  FrameReader reader;
  for (long i = 0; i < frames; i += frames_each) {
    const auto kind = static_cast<std::size_t>(i / frames_each % rubbish_kinds);
    auto picture = rubbish(static_cast<Rubbish>(kind), random);
    for (int frame = 0; frame < frames_each; ++frame) {
      const double limit = bench::milliseconds_spent() + budget;
      const auto code =
          reader.read(picture.image, {}, [&] { return bench::milliseconds_spent() < limit; })
              .code();
      ++tallies[kind].frames;
      if (code) (code == picture.code ? tallies[kind].right : tallies[kind].wrong) += 1;
      picture.image = shown_again(picture.image, random);
    }
    if (i % 50'000 == 0) print(tallies);
  }
  print(tallies);
}

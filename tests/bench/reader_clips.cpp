// Short clips of a label in an unsteady hand: the share read by the first, second and third frame.
// ZXing-C++ gets the same frames.
//
//   reader_clips [CLIPS a row, default 400]

#include <array>
#include <cstdio>
#include <cstdlib>

#include "labels/reader/frame_reader.hpp"
#include "tests/bench/processor_time.hpp"
#include "tests/generators/cells.hpp"
#include "tests/peers/peers.hpp"

using namespace rackside;

namespace {

constexpr int length = 3;
constexpr double budget = 36;  // milliseconds, as in the kiosk: a frame then ends within 40

using ByFrame = std::array<int, length>;

// Counts a clip in the frame in which it was first read, and in those behind it.
template <class Read>
void count(ByFrame& counts, const std::vector<tests::Picture>& clip, Read read) {
  for (std::size_t i = 0; i < length; ++i)
    if (read(clip[i].image)) {
      for (std::size_t k = i; k < length; ++k) ++counts[k];
      return;
    }
}

void row(double module_px, int version, int clips) {
  tests::Random random(20310405);
  ByFrame ours{}, zxing{};
  for (int i = 0; i < clips; ++i) {
    const Code code = tests::random_code(random);
    const std::string text(code.text());
    const auto clip = tests::film(tests::symbol_of(text, version),
                                  tests::tub_in_hand(module_px, version), length, random);
    FrameReader reader;
    count(ours, clip, [&](const GreyImage& image) {
      const double limit = bench::milliseconds_spent() + budget;
      return reader.read(image, {}, [&] { return bench::milliseconds_spent() < limit; }).code() ==
             code;
    });
    count(zxing, clip, [&](const GreyImage& image) { return tests::read_by_zxing(image) == text; });
  }
  std::printf("V%d-H %4.1f px a module  ", version, module_px);
  for (const ByFrame& counts : {ours, zxing})
    for (const int read : counts) std::printf(" %6.1f", 100.0 * read / clips);
  std::printf("\n");
  std::fflush(stdout);
}

}  // namespace

int main(int count, char** words) {
  const int clips = count > 1 ? std::atoi(words[1]) : 400;
  std::printf("%% of clips read by frame  ours 1      2      3  ZXing 1    2      3\n");
  for (const int version : {1, 2})
    for (const double module_px : {1.5, 2.0, 2.25, 2.5, 3.0, 4.0}) row(module_px, version, clips);
}

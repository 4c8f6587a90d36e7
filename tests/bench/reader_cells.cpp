// How many of so many frames are read, cell by cell: ours, ZXing-C++, zbar, and any of the two.
//
//   reader_cells [FRAMES a cell, default 400] [words that a cell's name begins with]

#include <algorithm>
#include <cstdio>
#include <cstdlib>

#include "labels/reader/frame_reader.hpp"
#include "tests/bench/processor_time.hpp"
#include "tests/generators/cells.hpp"
#include "tests/peers/peers.hpp"

using namespace rackside;

namespace {

constexpr double budget = 36;  // milliseconds, as in the kiosk: a frame then ends within 40

struct Marks {
  int ours = 0, zxing = 0, zbar = 0, any_peer = 0, wrong = 0;
  double milliseconds = 0, worst = 0;
};

void add_frame(Marks& marks, const tests::Cell& cell, tests::Random& random) {
  const Code code = tests::random_code(random);
  const std::string text(code.text());
  const auto picture =
      tests::photograph(tests::symbol_of(text, cell.scene.version), cell.scene, random);
  const double start = bench::milliseconds_spent();
  const auto read =
      FrameReader{}
          .read(picture.image, {}, [&] { return bench::milliseconds_spent() < start + budget; })
          .code();
  const bool ours = read == code;
  marks.wrong += read && !ours;
  const double spent = bench::milliseconds_spent() - start;
  marks.milliseconds += spent;
  marks.worst = std::max(marks.worst, spent);
  const bool zxing = tests::read_by_zxing(picture.image) == text;
  const bool zbar = tests::read_by_zbar(picture.image).contains(text);
  marks.ours += ours;
  marks.zxing += zxing;
  marks.zbar += zbar;
  marks.any_peer += zxing || zbar;
}

}  // namespace

int main(int count, char** words) {
  const int frames = count > 1 ? std::atoi(words[1]) : 400;
  const std::string wanted = count > 2 ? words[2] : "";
  std::printf("%-22s %6s %6s %6s %6s %6s %8s %8s\n", "% of frames read", "ours", "ZXing", "zbar",
              "any", "wrong", "ms mean", "ms worst");
  for (const auto& cell : tests::all_cells()) {
    if (cell.name.rfind(wanted, 0) != 0) continue;
    tests::Random random(20310405);
    Marks marks;
    for (int i = 0; i < frames; ++i) add_frame(marks, cell, random);
    const double share = 100.0 / frames;
    std::printf("%-22s %6.1f %6.1f %6.1f %6.1f %6d %8.1f %8.1f\n", cell.name.c_str(),
                marks.ours * share, marks.zxing * share, marks.zbar * share, marks.any_peer * share,
                marks.wrong, marks.milliseconds / frames, marks.worst);
    std::fflush(stdout);
  }
}

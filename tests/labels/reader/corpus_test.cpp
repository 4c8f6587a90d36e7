// A small corpus with a minimum of passes a cell: it fails when the reader gets worse. The counts
// of a full run stand in labels/reader/reading.md; these are below them by what chance allows for
// so few frames. No clock: every way is tried on every frame.

#include <map>

#include "labels/reader/frame_reader.hpp"
#include "tests/frame.hpp"
#include "tests/generators/cells.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

constexpr int frames = 8;

// Cells not named here must be read in every frame.
const std::map<std::string, int> minimum{
    {"motion 9", 1},
    {"noise 30", 7},
    {"glare 0.2", 6},
    {"glare 0.3", 6},
    {"glare 0.4", 5},
    {"in hand V1, px 2", 0},
    {"in hand V1, px 2.5", 4},
    {"in hand V1, px 3", 7},
    {"in hand V2, px 2", 0},
    {"in hand V2, px 2.5", 4},
    {"in hand V2, px 3", 6},
    {"px a module 1.5", 7},
    {"blur 2", 7},
};

}  // namespace

TEST_CASE("every cell of the corpus is read at least as often as before") {
  for (const Cell& cell : all_cells()) {
    Random random(20310612);
    int right = 0;
    for (int i = 0; i < frames; ++i) {
      const Code code = random_code(random);
      const auto picture =
          photograph(symbol_of(std::string(code.text()), cell.scene.version), cell.scene, random);
      const auto seen = FrameReader{}.read(picture.image, {}, [] { return true; }).code();
      right += seen == code;
      INFO(cell.name << ", frame " << i);
      CHECK((!seen || seen == code));
    }
    const auto found = minimum.find(cell.name);
    INFO(cell.name << ": " << right << " of " << frames);
    CHECK(right >= (found == minimum.end() ? frames : found->second));
  }
}

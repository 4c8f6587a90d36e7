// What is said about labels that were not read, by what was wrong with them: a confusion table.
//
//   reader_guidance [FRAMES a row, default 200]
//
// Each row has one cause, drawn evenly between a strength at which many frames are read and one at
// which none is. A frame that is read gets no words and is not counted.

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <optional>

#include "labels/reader/frame_reader.hpp"
#include "tests/bench/processor_time.hpp"
#include "tests/generators/cells.hpp"

using namespace rackside;
using tests::Scene;

namespace {

constexpr double budget = 36;  // milliseconds, as in the kiosk

constexpr std::array all_guidance{Guidance::ComeCloser, Guidance::MoreLight, Guidance::TiltIt,
                                  Guidance::FaceIt, Guidance::HoldStill};

struct Cause {
  const char* name;
  double Scene::*quantity;
  double from, to;
  Scene scene{};
};

const std::array causes{
    Cause{"far, px a module", &Scene::module_px, 1.0, 1.8},
    Cause{"far, in a hand", &Scene::module_px, 1.6, 2.4, tests::tub_in_hand(3, 1)},
    Cause{"dark, levels", &Scene::contrast, 6, 22},
    Cause{"glare, part of the side", &Scene::glare, 0.4, 0.9},
    Cause{"glare, in a hand", &Scene::glare, 0.4, 0.9, tests::tub_in_hand(4, 1)},
    Cause{"tilt, degrees", &Scene::tilt, 66, 76, {.module_px = 5}},
    Cause{"out of focus, sigma px", &Scene::blur, 2.5, 4},
    Cause{"moving, px", &Scene::motion, 9, 16},
    Cause{"no label, much clutter", &Scene::module_px, 0.01, 0.01},
};

struct Tally {
  int read = 0, silent = 0;
  std::array<int, all_guidance.size()> said{};
};

void look(Tally& tally, const Scene& scene, tests::Random& random) {
  const Code code = tests::random_code(random);
  const auto symbol = tests::symbol_of(std::string(code.text()), scene.version);
  const auto picture = tests::photograph(symbol, scene, random);
  const double limit = bench::milliseconds_spent() + budget;
  const Reading reading =
      FrameReader{}.read(picture.image, {}, [&] { return bench::milliseconds_spent() < limit; });
  if (reading.code()) {
    ++tally.read;
  } else if (!reading.guidance) {
    ++tally.silent;
  } else {
    const auto at = std::ranges::find(all_guidance, *reading.guidance) - all_guidance.begin();
    ++tally.said.at(static_cast<std::size_t>(at));
  }
}

void row(const Cause& cause, int frames) {
  tests::Random random(20310405);
  Tally tally;
  for (int i = 0; i < frames; ++i) {
    Scene scene = cause.scene;
    scene.*cause.quantity = cause.from + (cause.to - cause.from) * i / std::max(1, frames - 1);
    look(tally, scene, random);
  }
  std::printf("%-26s %6d", cause.name, tally.read);
  for (const int said : tally.said) std::printf(" %15d", said);
  std::printf(" %15d\n", tally.silent);
  std::fflush(stdout);
}

}  // namespace

int main(int count, char** words) {
  const int frames = count > 1 ? std::atoi(words[1]) : 200;
  std::printf("%-26s %6s", "cause", "read");
  for (const Guidance guidance : all_guidance)
    std::printf(" %15s", std::string(guidance_words(guidance)).c_str());
  std::printf(" %15s\n", "nothing");
  for (const Cause& cause : causes) row(cause, frames);
}

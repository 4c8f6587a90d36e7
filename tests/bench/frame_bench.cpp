// What a picture costs with the software renderer at 1280 by 800, in processor time: every screen
// whole and for the first time, whole again, and only where it changed (a finger on a tile), each
// beside a plain copy of as many pixels in the same run.
//
//   frame_bench [ROUNDS]

#include <cstring>

#include "fonts/font_files.hpp"
#include "kiosk/draw/canvas.hpp"
#include "kiosk/scene/damage.hpp"
#include "kiosk/screens/screens.hpp"
#include "tests/bench/processor_time.hpp"
#include "tests/bench/timing.hpp"
#include "tests/kiosk/screens/collections.hpp"

namespace {

using namespace rackside;
using namespace rackside::kiosk;
using namespace rackside::bench;

const Panel panel = panel_of(1280, 800);

double spent(const std::function<void()>& work) {
  const double before = milliseconds_spent();
  work();
  return milliseconds_spent() - before;
}

struct Bench {
  std::unique_ptr<FontBook> fonts = FontBook::open(running_program()).value();
  Surface surface{
      SDL_CreateRGBSurfaceWithFormat(0, panel.width, panel.height, 32, SDL_PIXELFORMAT_ARGB8888)};
  Renderer renderer{SDL_CreateSoftwareRenderer(surface.get())};
  Canvas canvas{renderer.get(), *fonts};
  std::vector<unsigned char> copy =
      std::vector<unsigned char>(static_cast<std::size_t>(surface->pitch * surface->h));

  double whole(const Scene& scene) {
    return spent([&] {
      canvas.draw(scene, palette(PaletteName::Day));
      SDL_RenderFlush(renderer.get());
    });
  }
  double changed(const Scene& before, const Scene& after) {
    return spent([&] {
      canvas.draw_parts(after, palette(PaletteName::Day), damage(before, after, panel));
      SDL_RenderFlush(renderer.get());
    });
  }
  double plain_copy() {
    return spent([&] { std::memcpy(copy.data(), surface->pixels, copy.size()); });
  }
};

void measure(Bench& bench, const tests::Situation& situation, int rounds) {
  const Model model = situation.model();
  Times composed, first, again, part, copied;
  Scene scene;
  for (int i = 0; i < rounds; ++i) {
    composed.all.push_back(spent([&] { scene = compose(model, panel, *bench.fonts); }));
    bench.canvas.forget();
    first.all.push_back(bench.whole(scene));
    again.all.push_back(bench.whole(scene));
    const Scene held = touched(scene, {.pressed = scene.targets.size() / 2, .focused = {}});
    part.all.push_back(bench.changed(scene, held));
    copied.all.push_back(bench.plain_copy());
  }
  fmt::print("{:28}", situation.name);
  for (Times* times : {&composed, &first, &again, &part})
    fmt::print("  {:6.2f} {:6.2f}", times->share(0.5), times->share(0.99));
  fmt::print("   {:5.1f} {:5.1f}\n", again.share(0.5) / copied.share(0.5),
             part.share(0.5) / again.share(0.5));
}

}  // namespace

int main(int argc, char** argv) {
  const int rounds = argc > 1 ? std::stoi(argv[1]) : 100;
  Bench bench;
  fmt::print("ms, median and 99 %: composed; drawn for the first time; again; a finger's change\n");
  fmt::print("last: again, as a multiple of a plain copy; the change, as a share of again\n");
  for (const auto& situation : tests::situations()) measure(bench, situation, rounds);
  print_memory("at the end");
}

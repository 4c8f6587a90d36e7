// A picture drawn only where it changed is the whole picture, pixel for pixel.

#include "kiosk/scene/damage.hpp"

#include "fonts/font_files.hpp"
#include "kiosk/draw/canvas.hpp"
#include "kiosk/screens/screens.hpp"
#include "tests/frame.hpp"
#include "tests/kiosk/screens/collections.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

struct Screen {
  Surface surface;
  Renderer renderer;
  Canvas canvas;

  Screen(const Panel& panel, const FontBook& fonts)
      : surface(SDL_CreateRGBSurfaceWithFormat(0, panel.width, panel.height, 32,
                                               SDL_PIXELFORMAT_ARGB8888)),
        renderer(SDL_CreateSoftwareRenderer(surface.get())),
        canvas(renderer.get(), fonts) {}
  void whole(const Scene& scene) {
    canvas.draw(scene, palette(PaletteName::Day));
    SDL_RenderFlush(renderer.get());
  }
  void changed(const Scene& before, const Scene& after, const Panel& panel) {
    canvas.draw_parts(after, palette(PaletteName::Day), damage(before, after, panel));
    SDL_RenderFlush(renderer.get());
  }
  [[nodiscard]] std::vector<std::uint32_t> pixels() const {
    const auto* first = static_cast<const std::uint32_t*>(surface->pixels);
    return {first, first + surface->pitch / 4 * surface->h};
  }
};

double area(const std::vector<Box>& boxes) {
  double sum = 0;
  for (const Box& box : boxes) sum += box.width * box.height;
  return sum;
}

}  // namespace

TEST_CASE("from every screen to every next one, what is drawn in part equals the whole") {
  const auto fonts = FontBook::open(running_program()).value();
  for (const Panel& panel : {panel_of(800, 480), panel_of(1280, 800)}) {
    Screen part(panel, *fonts);
    Screen whole(panel, *fonts);
    Scene before;
    part.whole(before);
    for (const Situation& situation : situations()) {
      const Scene scene = compose(situation.model(), panel, *fonts);
      INFO(situation.name);
      part.changed(before, scene, panel);
      whole.whole(scene);
      CHECK(part.pixels() == whole.pixels());
      before = scene;
    }
  }
}

TEST_CASE("a finger on a place, and off it again, is drawn in part and leaves no trace") {
  const auto fonts = FontBook::open(running_program()).value();
  const Panel panel = panel_of(1280, 800);
  const Scene scene = compose(situations().front().model(), panel, *fonts);
  Screen part(panel, *fonts);
  part.whole(scene);
  const auto before = part.pixels();
  for (std::size_t i = 0; i < scene.targets.size(); ++i) {
    const Scene held = touched(scene, {.pressed = i, .focused = {}});
    part.changed(scene, held, panel);
    CHECK(part.pixels() != before);
    part.changed(held, scene, panel);
    CHECK(part.pixels() == before);
  }
}

TEST_CASE("equal pictures have no damage, and a small change a small one") {
  const Panel panel = panel_of(1280, 800);
  const Box box{100, 100, 60, 20};
  const Scene before{{Fill{{0, 0, 1280, 800}, Ink::Slip}, Fill{box, Ink::Text}}, {}};
  Scene after = before;
  CHECK(damage(before, after, panel).empty());
  std::get<Fill>(after.items[1]).ink = Ink::Accent;
  const auto parts = damage(before, after, panel);
  REQUIRE(parts.size() == 1);
  CHECK(parts[0].holds(box));
  CHECK(area(parts) < 0.01 * 1280 * 800);
}

TEST_CASE("things that only change places are seen") {
  const Panel panel = panel_of(1280, 800);
  const Fill one{{100, 100, 60, 20}, Ink::Text};
  const Fill other{{120, 100, 60, 20}, Ink::Accent};
  CHECK_FALSE(damage({{one, other}, {}}, {{other, one}, {}}, panel).empty());
}

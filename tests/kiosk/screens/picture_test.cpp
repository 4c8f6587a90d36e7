// The screens as pixels, with SDL's software renderer and no display. Set RACKSIDE_PICTURES to a
// folder to keep them and look at them.

#include <cstdlib>

#include "fonts/font_files.hpp"
#include "kiosk/draw/canvas.hpp"
#include "kiosk/screens/screens.hpp"
#include "tests/frame.hpp"
#include "tests/generators/frames.hpp"
#include "tests/kiosk/screens/collections.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

struct Sheet {
  Surface surface;
  Renderer renderer;

  explicit Sheet(const Panel& panel)
      : surface(SDL_CreateRGBSurfaceWithFormat(0, panel.width, panel.height, 32,
                                               SDL_PIXELFORMAT_ARGB8888)),
        renderer(SDL_CreateSoftwareRenderer(surface.get())) {}

  [[nodiscard]] std::uint64_t ink_pixels(Colour paper) const {
    std::uint64_t count = 0;
    const auto ground = 0xFF000000u | static_cast<std::uint32_t>(paper.red) << 16 |
                        static_cast<std::uint32_t>(paper.green) << 8 | paper.blue;
    for (int y = 0; y < surface->h; ++y) {
      const auto* row = reinterpret_cast<const std::uint32_t*>(
          static_cast<const std::uint8_t*>(surface->pixels) + y * surface->pitch);
      for (int x = 0; x < surface->w; ++x) count += row[x] != ground ? 1 : 0;
    }
    return count;
  }
};

}  // namespace

TEST_CASE("every screen draws something in every palette at every size, and the same thing twice") {
  const auto fonts = FontBook::open(running_program()).value();
  Random random(3);
  const auto camera = std::make_shared<const GreyImage>(
      photograph(symbol_of("T4K79MWX", 1), {.clutter = 4}, random).image);
  const char* folder = std::getenv("RACKSIDE_PICTURES");
  const std::vector<std::pair<PaletteName, std::string>> palettes{
      {PaletteName::Day, "day"}, {PaletteName::Dusk, "dusk"}, {PaletteName::Night, "night"}};
  for (const Situation& situation : situations()) {
    const Model model = situation.model();
    for (const Panel& panel : panels()) {
      const kiosk::Scene scene = compose(model, panel, *fonts);
      for (const auto& [name, word] : palettes) {
        const Sheet sheet(panel);
        Canvas canvas(sheet.renderer.get(), *fonts, [&] { return camera; });
        canvas.draw(scene, palette(name), {});
        const auto ink = sheet.ink_pixels(palette(name).of(Ink::Paper));
        canvas.draw(scene, palette(name), {});
        CHECK(ink > 2000);
        CHECK(sheet.ink_pixels(palette(name).of(Ink::Paper)) == ink);
        if (folder != nullptr)
          CHECK(canvas.save_png(std::string(folder) + "/" + situation.name + "_" +
                                std::to_string(panel.width) + "x" + std::to_string(panel.height) +
                                "_" + word + ".png"));
      }
    }
  }
}

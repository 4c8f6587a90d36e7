#include "kiosk/shell/stage.hpp"

#include <vector>

#include "kiosk/scene/damage.hpp"

namespace rackside::kiosk {
namespace {

// The software renderer draws straight into the window's surface, which stays. Others swap buffers
// and promise nothing about what is in the next one.
bool keeps_picture(SDL_Renderer* renderer) {
  SDL_RendererInfo info{};
  return SDL_GetRendererInfo(renderer, &info) == 0 && (info.flags & SDL_RENDERER_SOFTWARE) != 0;
}

Box whole(const Panel& panel) {
  return {0, 0, static_cast<double>(panel.width), static_cast<double>(panel.height)};
}

}  // namespace

Stage::Stage(SDL_Window* window, SDL_Renderer* renderer, const FontBook& fonts,
             Canvas::NewestPicture newest)
    : window_(window),
      renderer_(renderer),
      canvas_(renderer, fonts, std::move(newest)),
      keeps_picture_(keeps_picture(renderer)) {}

void Stage::show(const Scene& scene, const Settings& settings, const Touching& touching,
                 const Panel& panel, Time now) {
  const PaletteName colours = settings.palette;
  Scene picture = touched(scene, touching);
  landing_.follow(scene, now);
  moves_ = settings.motion == Motion::Shown && scene.landing;
  if (const auto mark = landing_.at(now); mark && moves_) picture.items.emplace_back(*mark);
  const bool anew = whole_ || dark_ || colours != colours_ || !(panel == panel_);
  if (!anew && picture.items == drawn_.items) return;
  std::vector<Box> parts{whole(panel)};
  if (!anew && keeps_picture_) parts = damage(drawn_, picture, panel);
  canvas_.draw_parts(picture, palette(colours), parts);
  if (anew)
    SDL_RenderPresent(renderer_);
  else
    present(parts);
  drawn_ = std::move(picture);
  colours_ = colours;
  panel_ = panel;
  whole_ = dark_ = false;
}

void Stage::present(const std::vector<Box>& parts) {
  if (parts.empty()) return;
  std::vector<SDL_Rect> rects;
  for (const Box& part : parts)
    rects.push_back({static_cast<int>(part.x), static_cast<int>(part.y),
                     static_cast<int>(part.width), static_cast<int>(part.height)});
  SDL_RenderFlush(renderer_);
  const bool shown =
      keeps_picture_ &&
      SDL_UpdateWindowSurfaceRects(window_, rects.data(), static_cast<int>(rects.size())) == 0;
  if (!shown) SDL_RenderPresent(renderer_);
}

std::optional<Stage::Time> Stage::next_deadline(Time now) const {
  return moves_ && !dark_ ? landing_.next_deadline(now) : std::nullopt;
}

void Stage::darken() {
  if (dark_ && !whole_) return;
  canvas_.darken();
  SDL_RenderPresent(renderer_);
  dark_ = true;
  whole_ = false;
}

void Stage::lost_textures() {
  canvas_.forget();
  whole_ = true;
}

}  // namespace rackside::kiosk

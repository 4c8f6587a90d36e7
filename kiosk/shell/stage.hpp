#pragma once
// What is on the screen: knows what was drawn last and draws only where that changed.

#include "kiosk/draw/canvas.hpp"
#include "kiosk/scene/landing.hpp"
#include "kiosk/scene/panel.hpp"
#include "kiosk/settings/settings.hpp"

namespace rackside::kiosk {

class Stage {
 public:
  Stage(SDL_Window* window, SDL_Renderer* renderer, const FontBook& fonts,
        Canvas::NewestPicture newest);

  /// Since any fixed moment, by a clock that nobody sets.
  using Time = Landing::Time;

  /// Puts the scene on the screen. Nothing happens where it is there already.
  void show(const Scene& scene, const Settings& settings, const Touching& touching,
            const Panel& panel, Time now);
  /// When it should be shown again, for what moves in it; none when nothing does.
  [[nodiscard]] std::optional<Time> next_deadline(Time now) const;
  /// Black, until something is shown again.
  void darken();
  /// The display has lost what was on it: the next picture is drawn whole.
  void lost() { whole_ = true; }
  /// The renderer has lost its textures too.
  void lost_textures();

 private:
  void present(const std::vector<Box>& parts);

  SDL_Window* window_;
  SDL_Renderer* renderer_;
  Canvas canvas_;
  bool keeps_picture_;  // what is drawn stays after it was presented
  Landing landing_;
  bool moves_ = false;
  Scene drawn_;
  PaletteName colours_ = PaletteName::Day;
  Panel panel_;
  bool whole_ = true;
  bool dark_ = false;
};

}  // namespace rackside::kiosk

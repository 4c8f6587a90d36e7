#pragma once
// What is on the screen: knows what was drawn last and draws only where that changed.

#include "kiosk/draw/canvas.hpp"
#include "kiosk/scene/panel.hpp"

namespace rackside::kiosk {

class Stage {
 public:
  Stage(SDL_Window* window, SDL_Renderer* renderer, const FontBook& fonts,
        Canvas::NewestPicture newest);

  /// Puts the scene on the screen. Nothing happens where it is there already.
  void show(const Scene& scene, PaletteName colours, const Touching& touching, const Panel& panel);
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
  Scene drawn_;
  PaletteName colours_ = PaletteName::Day;
  Panel panel_;
  bool whole_ = true;
  bool dark_ = false;
};

}  // namespace rackside::kiosk

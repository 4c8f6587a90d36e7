#pragma once
// The SDL loop: sleeps until something happens, turns it into intents, runs `update`, hands out
// effects, and draws when the picture has changed.

#include <functional>
#include <optional>

#include "core/clock/clock.hpp"
#include "core/clock/id_source.hpp"
#include "kiosk/draw/canvas.hpp"
#include "kiosk/hands/focus.hpp"
#include "kiosk/hands/pointer.hpp"
#include "kiosk/model/update.hpp"
#include "kiosk/scene/panel.hpp"
#include "kiosk/shell/intent_queue.hpp"
#include "kiosk/wedge/wedge_reader.hpp"

namespace rackside::kiosk {

/// The SDL event type with which other threads wake the loop. Call after SDL_Init.
[[nodiscard]] std::uint32_t wake_event();
/// Wakes the loop; from any thread.
void wake_loop();

class Loop {
 public:
  struct Needs {
    SDL_Window* window;
    SDL_Renderer* renderer;
    const FontBook& fonts;
    Clock& clock;
    IdSource& ids;
    IntentQueue& results;
    std::function<void(const Effect&)> run_effect;
    Canvas::NewestPicture newest_picture;
    std::function<void(const Notice&)> tell;  // once for every notice, when it is on the screen
  };

  explicit Loop(Needs needs);

  /// Runs until `stop` was called.
  void run(std::string by, Settings settings);
  void stop() { running_ = false; }

 private:
  void wait();
  void handle(const SDL_Event& event);
  void handle_key(SDL_Keycode key, KeyTime at);
  void handle_wedge(const std::vector<WedgeOutput>& outputs);
  void move_focus(Direction direction);
  void press_enter();
  void finger(const SDL_TouchFingerEvent& finger);
  void measure_panel();

  void decide(const Intent& intent);
  [[nodiscard]] Stamp stamp();
  void decide_results();
  void decide(Next next);
  void picture();
  [[nodiscard]] std::optional<std::chrono::milliseconds> until_next_tick();
  [[nodiscard]] Touching touching() const;

  Needs needs_;
  Panel panel_;
  Canvas canvas_;
  Model model_;
  Scene scene_;
  Pointer pointer_;
  WedgeReader wedge_;
  std::optional<std::size_t> focus_;
  Scene drawn_;
  Touching drawn_touching_;
  PaletteName drawn_palette_ = PaletteName::Day;
  std::optional<Notice> told_;
  bool draw_again_ = true;
  bool running_ = true;
};

}  // namespace rackside::kiosk

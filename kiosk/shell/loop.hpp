#pragma once
// The SDL loop: sleeps until something happens, turns it into intents, runs `update`, hands out
// effects, and draws when the picture has changed.

#include <functional>
#include <optional>

#include "core/clock/clock.hpp"
#include "core/clock/id_source.hpp"
#include "kiosk/hands/blanking.hpp"
#include "kiosk/hands/focus.hpp"
#include "kiosk/hands/pointer.hpp"
#include "kiosk/model/update.hpp"
#include "kiosk/scene/panel.hpp"
#include "kiosk/service/pulse.hpp"
#include "kiosk/shell/event_wait.hpp"
#include "kiosk/shell/intent_queue.hpp"
#include "kiosk/shell/stage.hpp"
#include "kiosk/wedge/wedge_reader.hpp"

namespace rackside::kiosk {

/// What closing the window, Alt+F4 and Ctrl+Q do: in a window of a desktop they end the program; at
/// a kiosk that fills its screen somebody wants to leave, and needs the PIN.
enum class Closing { Ends, Asks };

class Loop {
 public:
  struct Needs {
    SDL_Window* window;
    SDL_Renderer* renderer;
    const FontBook& fonts;
    EventWait& sleep;
    Pulse& pulse;
    Clock& clock;
    IdSource& ids;
    IntentQueue& results;
    std::function<void(const Effect&)> run_effect;
    Canvas::NewestPicture newest_picture;
    std::function<void(const Notice&)> tell;  // once for every notice, when it is on the screen
    /// Pixels to a millimetre, asked again whenever the display changes; none: guessed.
    std::function<std::optional<double>()> density;
    Closing closing = Closing::Ends;
    /// The panel's lamp, on or off.
    std::function<void(bool)> light = [](bool) {};
    /// Since any fixed moment, by a clock that nobody sets.
    std::function<std::chrono::milliseconds()> running = [] {
      return std::chrono::milliseconds{SDL_GetTicks64()};
    };
  };

  explicit Loop(Needs needs);

  /// The first picture.
  void start(std::string by, Settings settings);
  /// One turn, without sleeping: all that has happened since the last one, then the picture.
  void turn();
  /// Starts, then sleeps and turns until `stop` was called or SDL_QUIT comes.
  void run(std::string by, Settings settings);
  void stop() { running_ = false; }

 private:
  using Time = std::chrono::milliseconds;

  // loop.cpp: sleeping, deciding, drawing
  void wait();
  void follow_clock();
  void pass_time();
  [[nodiscard]] Time until_next_tick();
  void decide(const Intent& intent);
  [[nodiscard]] Stamp stamp();
  void decide_results();
  void decide(Next next);
  void measure_panel();
  void display_changed();
  void picture();
  void follow_light();
  void tell_notice();

  // loop_input.cpp: what hands and readers do
  void handle(const SDL_Event& event);
  void handle_window(const SDL_WindowEvent& window);
  void press(Spot spot);
  void release(Spot spot);
  void want_to_close();
  void finger(const SDL_TouchFingerEvent& finger);
  void handle_key(const SDL_Keysym& key, KeyTime at);
  void walk_with(SDL_Keycode key);
  void handle_wedge(const std::vector<WedgeOutput>& outputs);
  void move_focus(Direction direction);
  void press_enter();

  Needs needs_;
  Panel panel_;
  std::optional<double> display_density_;
  Stage stage_;
  Model model_;
  Scene scene_;
  Pointer pointer_;
  WedgeReader wedge_;
  Blanking blanking_;
  bool key_only_wakes_ = false;  // the one that is being handled
  std::optional<std::size_t> focus_;
  std::optional<Instant> wall_seen_;  // when the clocks were last compared
  Time running_seen_{0};
  std::optional<Notice> told_;
  bool lit_ = true;
  bool running_ = true;
};

}  // namespace rackside::kiosk

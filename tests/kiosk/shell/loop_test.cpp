// The loop with SDL's own stand-in for a display: going dark and waking, a display that changes or
// loses what it showed, and who may end the program.

#include "kiosk/shell/loop.hpp"

#include <algorithm>

#include "fonts/font_files.hpp"
#include "kiosk/screens/screens.hpp"
#include "tests/fakes/dummy_display.hpp"
#include "tests/fakes/fixed_clock.hpp"
#include "tests/fakes/sdl_events.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;
using namespace std::chrono_literals;

namespace {

// Time goes on; beside that, somebody sets the wall clock.
class TwoClocks : public FixedClock {
 public:
  using FixedClock::FixedClock;
  void pass(std::chrono::milliseconds by) {
    advance(by);
    running += by;
  }
  std::chrono::milliseconds running{0};
};

struct Kiosk {
  DummyDisplay display;
  std::unique_ptr<FontBook> fonts = FontBook::open(running_program()).value();
  EventWait sleep;
  Pulse pulse{ServiceWish{}, [] {}};
  TwoClocks clock{at_hour(0).moment};
  CountingIds ids;
  IntentQueue results{[] {}};
  std::vector<Effect> effects;
  std::vector<std::string> told;
  std::optional<double> density;
  std::vector<bool> lamp;
  Loop loop;

  explicit Kiosk(Closing closing = Closing::Ends)
      : loop({display.window.get(),
              display.renderer.get(),
              *fonts,
              sleep,
              pulse,
              clock,
              ids,
              results,
              [this](const Effect& effect) { effects.push_back(effect); },
              {},
              [this](const Notice& notice) { told.push_back(notice.sentence); },
              [this] { return density; },
              closing,
              [this](bool on) { lamp.push_back(on); },
              [this] { return clock.running; }}) {
    loop.start("keeper", Settings{.blank_after = 10min});
    loop.turn();
  }

  void push(SDL_Event event) {
    SDL_PushEvent(&event);
    loop.turn();
  }
  void click(Spot spot) {
    for (const Uint32 type : {SDL_MOUSEBUTTONDOWN, SDL_MOUSEBUTTONUP})
      push(finger(type, static_cast<int>(spot.x), static_cast<int>(spot.y)));
  }
  void key(SDL_Keycode code, Uint16 mod = 0) { push(key_down(code, mod)); }
  void scan(const std::string& text) {
    for (SDL_Event event : burst(text)) SDL_PushEvent(&event);
    loop.turn();
  }
  void window_event(SDL_WindowEventID id) {
    SDL_Event event{};
    event.window = {.type = SDL_WINDOWEVENT, .windowID = SDL_GetWindowID(display.window.get())};
    event.window.event = static_cast<Uint8>(id);
    push(event);
  }
  void go_dark() {
    clock.pass(10min);
    loop.turn();
  }
  std::vector<std::uint32_t> pixels() {
    const SDL_Surface* surface = SDL_GetWindowSurface(display.window.get());
    const auto* first = static_cast<const std::uint32_t*>(surface->pixels);
    return {first, first + surface->pitch / 4 * surface->h};
  }
  bool dark() {
    const auto all = pixels();
    return std::ranges::all_of(all, [](auto pixel) { return (pixel & 0xFFFFFF) == 0; });
  }
  template <class Kind>
  bool wants() const {
    return std::ranges::any_of(
        effects, [](const Effect& effect) { return std::holds_alternative<Kind>(effect); });
  }
  // The middle of a target of the round's screen; it opens another screen.
  Spot key_place() {
    Model model;
    model.now = clock.now();
    const Scene scene = compose(model, panel_of(1280, 800), *fonts);
    REQUIRE_FALSE(scene.targets.empty());
    return scene.targets.front().box.middle();
  }
};

}  // namespace

TEST_CASE("left alone the screen goes black, and a touch brings the same picture back") {
  Kiosk kiosk;
  const auto before = kiosk.pixels();
  CHECK_FALSE(kiosk.dark());
  kiosk.go_dark();
  CHECK(kiosk.dark());
  kiosk.click(kiosk.key_place());
  CHECK(kiosk.pixels() == before);
}

TEST_CASE("the panel's lamp goes out with the picture and comes back with it") {
  Kiosk kiosk;
  CHECK(kiosk.lamp.empty());
  kiosk.go_dark();
  kiosk.loop.turn();
  CHECK(kiosk.lamp == std::vector{false});
  kiosk.click(kiosk.key_place());
  CHECK(kiosk.lamp == std::vector{false, true});
}

TEST_CASE("a touch on a lit screen acts") {
  Kiosk kiosk;
  const auto before = kiosk.pixels();
  kiosk.click(kiosk.key_place());
  CHECK(kiosk.pixels() != before);
}

TEST_CASE("a key that wakes the screen does nothing else") {
  Kiosk kiosk;
  const auto before = kiosk.pixels();
  kiosk.go_dark();
  kiosk.key(SDLK_RIGHT);
  CHECK(kiosk.pixels() == before);
  kiosk.clock.pass(1s);
  kiosk.key(SDLK_RIGHT);
  CHECK(kiosk.pixels() != before);
}

TEST_CASE("a label scanned in the dark wakes the screen and counts") {
  Kiosk kiosk;
  kiosk.go_dark();
  kiosk.scan("https://example.org");
  CHECK_FALSE(kiosk.dark());
  REQUIRE_FALSE(kiosk.told.empty());
  CHECK(kiosk.told.back() == "This label is not one of ours.");
}

TEST_CASE("what the camera reads in the dark counts, what it has to say about the light does not") {
  Kiosk kiosk;
  kiosk.go_dark();
  kiosk.results.post(ReaderSays{"It is too dark."});
  kiosk.loop.turn();
  CHECK(kiosk.dark());
  kiosk.results.post(CodeRead{"https://example.org", ReadBy::Camera});
  kiosk.loop.turn();
  CHECK_FALSE(kiosk.dark());
}

TEST_CASE(
    "a wall clock that is set does not send anybody back to the round, nor darken the screen") {
  for (const auto jump : {-26h, 26h}) {
    Kiosk kiosk;
    kiosk.click(kiosk.key_place());
    kiosk.clock.advance(jump);
    kiosk.loop.turn();
    CHECK_FALSE(kiosk.dark());
    CHECK_FALSE(kiosk.wants<TidyLog>());
    kiosk.clock.pass(idle_return);
    kiosk.loop.turn();
    CHECK(kiosk.wants<TidyLog>());
  }
}

TEST_CASE("a display that lost what it showed gets the whole picture again") {
  Kiosk kiosk;
  const auto before = kiosk.pixels();
  for (const Uint32 type : {SDL_RENDER_TARGETS_RESET, SDL_RENDER_DEVICE_RESET, SDL_DISPLAYEVENT}) {
    SDL_Surface* surface = SDL_GetWindowSurface(kiosk.display.window.get());
    SDL_FillRect(surface, nullptr, 0x00FF00FF);
    SDL_Event event{};
    event.type = type;
    kiosk.push(event);
    CHECK(kiosk.pixels() == before);
  }
}

TEST_CASE("a window of another size gets a picture of that size, as dense as was set up") {
  Kiosk kiosk;
  SDL_SetWindowSize(kiosk.display.window.get(), 800, 480);
  kiosk.loop.turn();
  CHECK(kiosk.pixels().size() == 800u * 480);
  CHECK_FALSE(kiosk.dark());
}

TEST_CASE("the display's own density is asked again when the display changes") {
  Kiosk kiosk;
  const auto before = kiosk.pixels();
  kiosk.density = 4.0;
  SDL_Event event{};
  event.type = SDL_DISPLAYEVENT;
  kiosk.push(event);
  CHECK(kiosk.pixels() != before);
}

TEST_CASE("in a window, its close, Alt+F4 and Ctrl+Q end the program") {
  for (int way = 0; way < 3; ++way) {
    Kiosk kiosk;
    if (way == 0) kiosk.window_event(SDL_WINDOWEVENT_CLOSE);
    if (way == 1) kiosk.key(SDLK_F4, KMOD_LALT);
    if (way == 2) kiosk.key(SDLK_q, KMOD_LCTRL);
    CHECK(kiosk.wants<Quit>());
  }
}

TEST_CASE("a kiosk that fills its screen and has a keeper is not left by any of them") {
  Kiosk kiosk(Closing::Asks);
  People people;
  people.by_name["Ines"] = Person{.name = "Ines", .role = Role::Keeper, .until = {}, .added = {}};
  kiosk.results.post(PinFound{true});
  kiosk.results.post(RosterLoaded{Roster{{}, people}});
  kiosk.loop.turn();
  kiosk.window_event(SDL_WINDOWEVENT_CLOSE);
  kiosk.key(SDLK_F4, KMOD_LALT);
  kiosk.key(SDLK_q, KMOD_LCTRL);
  kiosk.key(SDLK_ESCAPE);
  CHECK_FALSE(kiosk.wants<Quit>());
}

TEST_CASE("asked from outside, it ends from whatever screen and in the dark") {
  Kiosk kiosk(Closing::Asks);
  kiosk.go_dark();
  SDL_Event quit{};
  quit.type = SDL_QUIT;
  SDL_PushEvent(&quit);
  // Would never come back if it did not end.
  kiosk.loop.run("keeper", Settings{});
}

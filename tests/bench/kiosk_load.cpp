// From a hand's or a scanner's input to the picture, while everything else goes on too: the whole
// collection is read and forecast again and again, the log is exported, and a camera delivers
// pictures. The same inputs first without all that, in the same run. The real loop, threads, log
// and reader; SDL's stand-in for a display, the software renderer at 1280 by 800.
//
//   kiosk_load [EVENTS [INPUTS]]

#include <atomic>
#include <thread>

#include "core/interchange/export.hpp"
#include "core/store/sqlite_log.hpp"
#include "fonts/font_files.hpp"
#include "kiosk/shell/effect_runner.hpp"
#include "kiosk/shell/loop.hpp"
#include "tests/bench/invented_log.hpp"
#include "tests/fakes/fake_pin_keeper.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/generators/frames.hpp"

namespace {

using namespace rackside;
using namespace rackside::bench;
using namespace std::chrono_literals;
using Clock = std::chrono::steady_clock;

// Thirty pictures a second, no two alike, as a hand-held tub gives them: paper, print and a label.
class BusyCamera final : public FrameSource {
 public:
  BusyCamera() {
    tests::Random random(3);
    const auto modules = tests::symbol_of(std::string(tests::random_code(random).text()), 1);
    for (int i = 0; i < 30; ++i)
      pictures_.push_back(tests::photograph(modules, tests::Scene{}, random).image);
  }
  Result<std::optional<GreyImage>> next(std::chrono::milliseconds patience) override {
    std::this_thread::sleep_for(std::min(patience, 33ms));
    if (!delivering) return std::nullopt;
    return pictures_[static_cast<std::size_t>(++delivered) % pictures_.size()];
  }
  void interrupt() override {}
  [[nodiscard]] std::string name() const override { return "camera of the bench"; }

  static inline std::atomic<bool> delivering = false;
  static inline std::atomic<int> delivered = 0;

 private:
  std::vector<GreyImage> pictures_;
};

struct Display {
  Display() {
    SDL_SetHint(SDL_HINT_VIDEODRIVER, "dummy");
    SDL_SetHint(SDL_HINT_FRAMEBUFFER_ACCELERATION, "0");
    SDL_Init(SDL_INIT_VIDEO);
    window.reset(SDL_CreateWindow("", 0, 0, 1280, 800, 0));
    renderer.reset(SDL_CreateRenderer(window.get(), -1, SDL_RENDERER_SOFTWARE));
  }
  ~Display() {
    renderer.reset();
    window.reset();
    SDL_Quit();
  }
  kiosk::Window window;
  kiosk::Renderer renderer;
};

std::unique_ptr<LogStore> opened(const std::filesystem::path& path, Access access) {
  return SqliteLog::open(path, access).value();
}

// An input that is on its way to the picture. One at a time.
struct Input {
  std::vector<SDL_Event> events;
  Times* to_picture;
  Times* to_answer;  // what the log had to say or to keep is in the picture too; may be null
};

class Bench {
 public:
  explicit Bench(const std::filesystem::path& path)
      : runner_({opened(path, Access::Write), opened(path, Access::Read), clock_, written_ids_,
                 results_, eye_, [](const kiosk::Settings&) { return Result<void>{}; },
                 [](const auto&, const auto&) { return Result<PrintOutcome>{}; },
                 [](const CoverReading&, const auto&) { return Result<std::string>{}; },
                 [](const ReturnReport&, const auto&) { return Result<std::string>{}; },
                 [] { return kiosk::PrintersFound{}; },
                 [](const EventId&, const GreyImage&) { return Result<std::string>{}; },
                 std::make_unique<tests::FakePinKeeper>(), [] {},
                 [] { return std::vector<kiosk::RecordFile>{}; },
                 std::make_unique<SystemIds>(clock_)}),
        loop_({display_.window.get(),
               display_.renderer.get(),
               *fonts_,
               sleep_,
               pulse_,
               clock_,
               ids_,
               results_,
               [this](const kiosk::Effect& effect) { carry_out(effect); },
               {},
               [](const kiosk::Notice&) {},
               [] { return std::nullopt; }}) {
    eye_.look_through(std::make_unique<BusyCamera>(), kiosk::Settings{});
    loop_.start("keeper", kiosk::Settings{});
  }

  // Runs the kiosk until `done`; `give` may hand in inputs from another thread meanwhile.
  void run(const std::atomic<bool>& done) {
    while (!done) {
      sleep_.wait(5ms);
      turn();
    }
  }
  void reload() { runner_.run(kiosk::LoadOverview{}); }

  // From the thread of hands. Comes back when the input has been answered.
  void give(const Input& input) {
    const auto begun = Clock::now();
    {
      const std::scoped_lock lock(turning_);
      for (SDL_Event event : input.events) SDL_PushEvent(&event);
      drawn_ = answered_ = false;
      answers_due_ = 0;
      pending_ = true;
    }
    sleep_.wake();
    const auto since = [&] {
      return std::chrono::duration<double, std::milli>(Clock::now() - begun).count();
    };
    while (!drawn_) std::this_thread::sleep_for(50us);
    input.to_picture->all.push_back(since());
    if (input.to_answer == nullptr) return;
    while (!answered_) std::this_thread::sleep_for(50us);
    input.to_answer->all.push_back(since());
  }

  std::atomic<int> overviews = 0;

 private:
  void turn() {
    const std::scoped_lock lock(turning_);
    // What was posted before the turn began is in its picture.
    const int posted = answers_posted_;
    loop_.turn();
    if (!pending_) return;
    drawn_ = true;
    if (answers_due_ > 0 && posted >= answers_due_) answered_ = true;
  }
  void carry_out(const kiosk::Effect& effect) {
    runner_.run(effect);
    if (std::holds_alternative<kiosk::LoadOverview>(effect)) ++overviews;
    if (!std::holds_alternative<kiosk::LoadHistory>(effect) &&
        !std::holds_alternative<kiosk::SaveDrafts>(effect))
      return;
    answers_due_ = ++answers_asked_;
    runner_.ask([this] {
      ++answers_posted_;
      sleep_.wake();
    });
  }

  Display display_;
  std::unique_ptr<kiosk::FontBook> fonts_ = kiosk::FontBook::open(running_program()).value();
  SystemClock clock_;
  SystemIds ids_{clock_};
  SystemIds written_ids_{clock_};
  kiosk::EventWait sleep_;
  kiosk::Pulse pulse_{kiosk::ServiceWish{}, [] {}};
  kiosk::IntentQueue results_{[this] { sleep_.wake(); }};
  kiosk::CameraEye eye_{results_, [](const std::string&) { return nullptr; }};
  std::mutex turning_;
  int answers_asked_ = 0;
  std::atomic<int> answers_due_ = 0;
  std::atomic<int> answers_posted_ = 0;
  std::atomic<bool> pending_ = false, drawn_ = false, answered_ = false;
  kiosk::EffectRunner runner_;
  kiosk::Loop loop_;
};

SDL_Event key_down(SDL_Keycode code) {
  SDL_Event event{};
  event.key = {.type = SDL_KEYDOWN, .timestamp = SDL_GetTicks()};
  event.key.keysym.sym = code;
  return event;
}

// A whole burst, as a scanner types it.
std::vector<SDL_Event> burst(const Code& tub) {
  std::vector<SDL_Event> events;
  for (const char c : std::string(tub.text())) {
    events.push_back(key_down(SDL_Keycode(c)));
    SDL_Event text{};
    text.text = {.type = SDL_TEXTINPUT, .timestamp = SDL_GetTicks()};
    text.text.text[0] = c;
    events.push_back(text);
  }
  events.push_back(key_down(SDLK_RETURN));
  return events;
}

SDL_Event finger(std::uint32_t type, int x, int y) {
  SDL_Event event{};
  event.button = {.type = type, .x = x, .y = y};
  return event;
}

struct Measured {
  Times scan, scan_answer, press, tap, tap_answer;
  void print(const char* when) {
    fmt::print("{}\n", when);
    scan.print("  scan to the tub");
    scan_answer.print("  scan to the tub with its records");
    press.print("  finger down to the pressed tile");
    tap.print("  finger up to the next picture");
    tap_answer.print("  finger up to saved and drawn");
  }
};

// The first tile of the tub screen at this size.
constexpr int tile_x = 860, tile_y = 150;

Measured walk(Bench& bench, int inputs) {
  Measured times;
  std::mt19937 random{11};
  const auto pause = [&] {
    std::this_thread::sleep_for(std::chrono::milliseconds(20 + random() % 60));
  };
  for (int i = 0; i < inputs; ++i) {
    const Code tub = Maker::tub(static_cast<std::size_t>(i * 37 % animal_count));
    bench.give({burst(tub), &times.scan, &times.scan_answer});
    pause();
    bench.give({{finger(SDL_MOUSEBUTTONDOWN, tile_x, tile_y)}, &times.press, nullptr});
    pause();
    bench.give({{finger(SDL_MOUSEBUTTONUP, tile_x, tile_y)}, &times.tap, &times.tap_answer});
    pause();
  }
  return times;
}

}  // namespace

int main(int argc, char** argv) {
  const int events = argc > 1 ? std::stoi(argv[1]) : 1'000'000;
  const int inputs = argc > 2 ? std::stoi(argv[2]) : 500;
  const rackside::tests::TemporaryFolder folder;
  {
    Maker maker;
    auto log = SqliteLog::open(folder / "log.db", Access::Write).value();
    fill(*log, maker, events);
  }
  Bench bench(folder / "log.db");
  std::atomic<bool> done = false, loaded = false;
  std::atomic<int> exports = 0;
  std::thread hands([&] {
    std::this_thread::sleep_for(8s);  // everything is read and forecast for the first time
    walk(bench, inputs).print("nothing else going on");
    loaded = true;
    BusyCamera::delivering = true;
    std::this_thread::sleep_for(1s);
    walk(bench, inputs).print("forecast, export and camera going on");
    done = true;
  });
  std::thread exporting([&] {
    const auto log = opened(folder / "log.db", Access::Read);
    std::int64_t written = 0;
    const auto take = [&](std::string_view text) {
      written += static_cast<std::int64_t>(text.size());
    };
    while (!done) {
      std::this_thread::sleep_for(10ms);
      if (!loaded) continue;
      if (!export_log(*log, take, take)) std::exit(1);
      ++exports;
    }
  });
  std::thread reading([&] {
    while (!done) {
      std::this_thread::sleep_for(2s);
      if (loaded) bench.reload(), ++bench.overviews;
    }
  });
  bench.run(done);
  for (std::thread* thread : {&hands, &exporting, &reading}) thread->join();
  fmt::print("meanwhile: {} times read and forecast, {} exports, {} pictures looked at\n",
             bench.overviews.load(), exports.load(), BusyCamera::delivered.load());
  print_memory("at the end");
}

// From a hand's or a scanner's input to the picture, while everything else goes on too: the whole
// collection is read and forecast again and again, the log is exported, and a camera delivers
// pictures. The same inputs first without all that, in the same run. The real loop, threads, log
// and reader; SDL's stand-in for a display, the software renderer at 1280 by 800.
//
//   kiosk_load [EVENTS [INPUTS]]

#include "core/store/sqlite_log.hpp"
#include "tests/bench/invented_log.hpp"
#include "tests/bench/rush.hpp"
#include "tests/fakes/sdl_events.hpp"
#include "tests/fakes/temporary_folder.hpp"

namespace {

using namespace rackside;
using namespace rackside::bench;
using namespace std::chrono_literals;
using rackside::tests::burst;
using rackside::tests::finger;

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

Measured walk(TimedKiosk& kiosk, int inputs) {
  Measured times;
  std::mt19937 random{11};
  const auto pause = [&] {
    std::this_thread::sleep_for(std::chrono::milliseconds(20 + random() % 60));
  };
  for (int i = 0; i < inputs; ++i) {
    const Code tub = Maker::tub(static_cast<std::size_t>(i * 37 % animal_count));
    kiosk.give({burst(tub.text()), &times.scan, &times.scan_answer});
    pause();
    kiosk.give({{finger(SDL_MOUSEBUTTONDOWN, tile_x, tile_y)}, &times.press, nullptr});
    pause();
    kiosk.give({{finger(SDL_MOUSEBUTTONUP, tile_x, tile_y)}, &times.tap, &times.tap_answer});
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
  TimedKiosk kiosk(folder / "log.db", std::make_unique<BusyCamera>());
  Rush rush(kiosk, folder / "log.db");
  std::atomic<bool> done = false;
  std::thread hands([&] {
    std::this_thread::sleep_for(8s);  // everything is read and forecast for the first time
    walk(kiosk, inputs).print("nothing else going on");
    rush.begin();
    std::this_thread::sleep_for(1s);
    walk(kiosk, inputs).print("forecast, export and camera going on");
    done = true;
  });
  kiosk.run(done);
  hands.join();
  fmt::print("meanwhile: {} times read and forecast, {} exports, {} pictures looked at\n",
             kiosk.times_read(), rush.exports(), BusyCamera::delivered.load());
  print_memory("at the end");
}

// What a person waits for at the kiosk, on two thousand tubs and a million events: from a scan to
// the drawn tub, from a tap to the durable commit and the drawn answer (beside a bare SQLite commit
// in the same run), and from the start to the first picture. The real log, model and screens; the
// software renderer; no window, no threads.
//
//   kiosk_bench [EVENTS]

#include "core/clock/system_clock.hpp"
#include "core/clock/system_ids.hpp"
#include "core/overview/overview.hpp"
#include "core/store/sqlite_log.hpp"
#include "fonts/font_files.hpp"
#include "kiosk/draw/canvas.hpp"
#include "kiosk/model/update.hpp"
#include "kiosk/screens/screens.hpp"
#include "tests/bench/bare_commit.hpp"
#include "tests/bench/invented_log.hpp"
#include "tests/fakes/temporary_folder.hpp"

namespace {

using namespace rackside;
using namespace rackside::bench;

constexpr int measured = 1000;

// A kiosk whose effects are carried out at once.
class Bench {
 public:
  explicit Bench(const std::filesystem::path& path)
      : log_(SqliteLog::open(path, Access::Write).value()),
        surface_(SDL_CreateRGBSurfaceWithFormat(0, panel_.width, panel_.height, 32,
                                                SDL_PIXELFORMAT_ARGB8888)),
        renderer_(SDL_CreateSoftwareRenderer(surface_.get())),
        fonts_(kiosk::FontBook::open(running_program()).value()),
        canvas_(renderer_.get(), *fonts_) {
    auto [model, effects] = kiosk::begin("keeper", clock_.now());
    model_ = std::move(model);
    does(kiosk::RosterLoaded{read_roster(*log_)});
    draw();
  }

  void load_overview() {
    auto overview = read_overview(*log_, forecaster_, clock_.now(), Until::Everything);
    does(kiosk::OverviewReady{std::move(*overview), {}});
  }
  // What a person does; the times below are then of this alone.
  void person_does(const kiosk::Intent& intent) {
    commit_ms = forecast_ms = 0;
    does(intent);
  }
  void does(const kiosk::Intent& intent) {
    auto [model, effects] =
        kiosk::update(std::move(model_), intent, {clock_.now(), ids_.next_event()});
    model_ = std::move(model);
    for (const kiosk::Effect& effect : effects) run(effect);
  }
  void draw() {
    canvas_.draw(compose(model_, panel_, *fonts_), kiosk::palette(kiosk::PaletteName::Day), {});
    SDL_RenderPresent(renderer_.get());
  }
  double commit_ms = 0;
  double forecast_ms = 0;
  LogStore& log() { return *log_; }

 private:
  void run(const kiosk::Effect& effect) {
    if (const auto* save = std::get_if<kiosk::SaveDrafts>(&effect)) {
      Result<std::vector<Event>> saved;
      commit_ms = milliseconds_of([&] { saved = log_->append(save->drafts, clock_.now().utc); });
      does(kiosk::Saved{save->drafts, std::move(saved)});
    }
    if (const auto* load = std::get_if<kiosk::LoadHistory>(&effect))
      does(kiosk::HistoryLoaded{load->tub, load->animal, log_->read_animal(load->animal)});
    // The kiosk's other thread does this; nobody waits for it.
    if (const auto* one = std::get_if<kiosk::ForecastAnimal>(&effect))
      forecast_ms = milliseconds_of([&] { (void)forecaster_.one(one->events, clock_.now()); });
  }

  kiosk::Panel panel_ = kiosk::panel_of(1280, 800);
  SystemClock clock_;
  SystemIds ids_{clock_};
  std::unique_ptr<SqliteLog> log_;
  kiosk::Surface surface_;
  kiosk::Renderer renderer_;
  std::unique_ptr<kiosk::FontBook> fonts_;
  kiosk::Canvas canvas_;
  Forecaster forecaster_;
  kiosk::Model model_;
};

}  // namespace

int main(int argc, char** argv) {
  const int events = argc > 1 ? std::stoi(argv[1]) : 1'000'000;
  const rackside::tests::TemporaryFolder folder;
  Maker maker;
  {
    auto log = SqliteLog::open(folder / "log.db", Access::Write).value();
    fill(*log, maker, events);
  }
  std::optional<Bench> kiosk;
  fmt::print("{:44} {:.0f} ms\n", "start to first picture",
             milliseconds_of([&] { kiosk.emplace(folder / "log.db"); }));
  print_memory("after the start");
  fmt::print("{:44} {:.2f} s\n", "everything read and forecast (other thread)",
             milliseconds_of([&] { kiosk->load_overview(); }) / 1000);
  print_memory("with all forecasts");

  BareTable bare(folder / "bare.db");
  Times scan, tap, commit, least, forecast;
  for (int i = 0; i < measured; ++i) {
    const Code tub = Maker::tub(static_cast<std::size_t>(i * 37 % animal_count));
    scan.all.push_back(milliseconds_of([&] {
                         kiosk->person_does(kiosk::CodeRead{std::string(tub.text())});
                         kiosk->draw();
                       }) -
                       kiosk->forecast_ms);
    forecast.all.push_back(kiosk->forecast_ms);
    least.all.push_back(milliseconds_of([&] { bare.commit_one(); }));
    tap.all.push_back(milliseconds_of([&] {
                        kiosk->person_does(kiosk::Record{Action::Misted});
                        kiosk->draw();
                      }) -
                      kiosk->forecast_ms);
    commit.all.push_back(kiosk->commit_ms);
    if (i % 100 == 99 && !kiosk->log().tidy()) return 1;
  }
  scan.print("from a scan to the drawn tub");
  tap.print("from a tap to commit and drawn answer");
  least.print("bare SQLite: insert and commit");
  commit.print("the tap's commit alone");
  fmt::print("{:44} median {:8.2f}      95 % {:8.2f}\n", "ratio of the commits",
             commit.share(0.5) / least.share(0.5), commit.share(0.95) / least.share(0.95));
  forecast.print("one forecast anew (other thread)");
  print_memory("at the end");
}

#include "tests/bench/timed_kiosk.hpp"

#include <thread>

#include "core/store/sqlite_log.hpp"
#include "tests/fakes/fake_pin_keeper.hpp"

namespace rackside::bench {

using namespace std::chrono_literals;

namespace {

std::unique_ptr<LogStore> opened(const std::filesystem::path& path, Access access) {
  return SqliteLog::open(path, access).value();
}

}  // namespace

TimedKiosk::TimedKiosk(const std::filesystem::path& path, std::unique_ptr<FrameSource> camera)
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
  eye_.look_through(std::move(camera), kiosk::Settings{});
  loop_.start("keeper", kiosk::Settings{});
}

void TimedKiosk::run(const std::atomic<bool>& done) {
  while (!done) {
    sleep_.wait(5ms);
    turn();
  }
}

void TimedKiosk::reload() {
  runner_.run(kiosk::LoadOverview{});
  ++overviews_;
}

void TimedKiosk::give(const Input& input) {
  const auto begun = std::chrono::steady_clock::now();
  {
    const std::scoped_lock lock(turning_);
    for (SDL_Event event : input.events) SDL_PushEvent(&event);
    drawn_ = answered_ = false;
    answers_due_ = 0;
    pending_ = true;
  }
  sleep_.wake();
  const auto since = [&] {
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begun)
        .count();
  };
  while (!drawn_) std::this_thread::sleep_for(50us);
  input.to_picture->all.push_back(since());
  if (input.to_answer == nullptr) return;
  while (!answered_) std::this_thread::sleep_for(50us);
  input.to_answer->all.push_back(since());
}

void TimedKiosk::turn() {
  const std::scoped_lock lock(turning_);
  // What was posted before the turn began is in its picture.
  const int posted = answers_posted_;
  loop_.turn();
  if (!pending_) return;
  drawn_ = true;
  if (answers_due_ > 0 && posted >= answers_due_) answered_ = true;
}

void TimedKiosk::carry_out(const kiosk::Effect& effect) {
  runner_.run(effect);
  if (std::holds_alternative<kiosk::LoadOverview>(effect)) ++overviews_;
  if (!std::holds_alternative<kiosk::LoadHistory>(effect) &&
      !std::holds_alternative<kiosk::SaveDrafts>(effect))
    return;
  answers_due_ = ++answers_asked_;
  runner_.ask([this] {
    ++answers_posted_;
    sleep_.wake();
  });
}

}  // namespace rackside::bench

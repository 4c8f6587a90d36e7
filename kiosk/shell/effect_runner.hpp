#pragma once
// Runs effects on two threads and posts their results. One thread writes and answers short
// questions, in order; the other reads the whole log and forecasts, with a log of its own.

#include <functional>
#include <memory>
#include <set>

#include "core/clock/clock.hpp"
#include "core/log/log_store.hpp"
#include "core/overview/forecaster.hpp"
#include "kiosk/model/effect.hpp"
#include "kiosk/shell/intent_queue.hpp"
#include "kiosk/shell/job_thread.hpp"

namespace rackside::kiosk {

class EffectRunner {
 public:
  struct Needs {
    std::unique_ptr<LogStore> log;          // for the writing thread
    std::unique_ptr<LogStore> reading_log;  // for the reading thread
    Clock& clock;
    IntentQueue& results;
    std::function<Result<void>(const Settings&)> keep_settings;  // on the writing thread
    std::function<void()> quit;
  };

  explicit EffectRunner(Needs needs) : needs_(std::move(needs)) {}
  /// Everything that was to be saved is saved before it ends. The threads hand work to each other,
  /// so both objects must outlive both threads.
  ~EffectRunner() {
    writing_.finish();
    reading_.finish();
  }
  EffectRunner(const EffectRunner&) = delete;
  EffectRunner& operator=(const EffectRunner&) = delete;

  void run(const Effect& effect);
  /// Calls `answer` on the writing thread when it is through with all that was handed to it before.
  void ask(std::function<void()> answer) { writing_.add(std::move(answer)); }

 private:
  void save(const SaveDrafts& effect);
  void load_overview();
  void finish_overview(OverviewReady ready);
  void report(Error error);

  Needs needs_;
  Forecaster forecaster_;  // reading thread only
  // Animals that were written about while the overview was being read. Writing thread only.
  std::set<AnimalId> touched_;
  JobThread reading_;
  JobThread writing_;
};

}  // namespace rackside::kiosk

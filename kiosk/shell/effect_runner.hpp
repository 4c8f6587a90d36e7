#pragma once
// Runs effects on three threads and posts their results. One writes and answers short questions,
// in order; one reads the whole log and forecasts, with a log of its own; one makes labels.

#include <functional>
#include <memory>
#include <set>

#include "core/clock/clock.hpp"
#include "core/clock/id_source.hpp"
#include "core/log/log_store.hpp"
#include "core/overview/cover_reading.hpp"
#include "core/overview/forecaster.hpp"
#include "core/people/pin.hpp"
#include "kiosk/model/effect.hpp"
#include "kiosk/shell/camera_eye.hpp"
#include "kiosk/shell/file_import.hpp"
#include "kiosk/shell/intent_queue.hpp"
#include "kiosk/shell/job_thread.hpp"
#include "labels/label/label_content.hpp"
#include "labels/printing/print_run.hpp"

namespace rackside::kiosk {

class EffectRunner {
 public:
  struct Needs {
    std::unique_ptr<LogStore> log;          // for the writing thread
    std::unique_ptr<LogStore> reading_log;  // for the reading thread
    Clock& clock;
    IdSource& ids;  // used by the writing thread alone
    IntentQueue& results;
    CameraEye& camera;
    std::function<Result<void>(const Settings&)> keep_settings;  // on the writing thread
    // On the printing thread.
    std::function<Result<PrintOutcome>(const std::vector<LabelContent>&, const Settings&)> print;
    std::function<Result<std::string>(const CoverReading&, const Settings&)> print_handover;
    std::function<Result<std::string>(const ReturnReport&, const Settings&)> print_return;
    std::function<PrintersFound()> find_printers;
    // On the writing thread. Gives back the name under which the picture is beside the log.
    std::function<Result<std::string>(const EventId&, const GreyImage&)> keep_picture;
    std::unique_ptr<PinKeeper> pin;  // on the writing thread
    std::function<void()> quit;
    // On the reading thread.
    std::function<std::vector<RecordFile>()> find_files;
    std::unique_ptr<IdSource> reading_ids;
  };

  explicit EffectRunner(Needs needs) : needs_(std::move(needs)) {}
  /// Everything that was to be saved is saved before it ends. The threads hand work to each other,
  /// so both objects must outlive both threads.
  ~EffectRunner() {
    printing_.finish();
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
  void save_with_picture(Draft draft, const std::shared_ptr<const GreyImage>& picture);
  [[nodiscard]] HowFar how_far_with(const EventId& cover);
  void foresee_cover(const ForeseeCover& effect);
  void tell_return(const TellReturn& effect);
  void print_handover(const PrintHandover& effect);
  void load_overview();
  void finish_overview(OverviewReady ready);
  void make_batch(const MakeBatch& effect);
  void print_labels(const PrintLabels& effect);
  void finish_labels(const PrintLabels& effect, const Result<PrintOutcome>& outcome);
  void report(Error error);

  Needs needs_;
  Forecaster forecaster_;  // reading thread only
  // Animals that were written about while the overview was being read. Writing thread only.
  std::set<AnimalId> touched_;
  FileImport import_{{reading_, *needs_.reading_log, *needs_.reading_ids},
                     {writing_, *needs_.log, needs_.ids},
                     needs_.clock,
                     needs_.results};
  JobThread printing_;
  JobThread reading_;
  JobThread writing_;
};

}  // namespace rackside::kiosk

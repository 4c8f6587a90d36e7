#pragma once
// Records out of a CSV file into the log, on the kiosk's threads: looked at on the one that reads,
// written in parts on the one that writes, with whatever is tapped meanwhile between the parts.

#include <atomic>
#include <memory>

#include "core/clock/clock.hpp"
#include "core/clock/id_source.hpp"
#include "core/interchange/take_over.hpp"
#include "kiosk/model/effect.hpp"
#include "kiosk/shell/intent_queue.hpp"
#include "kiosk/shell/job_thread.hpp"

namespace rackside::kiosk {

class FileImport {
 public:
  /// What each of the two threads works with.
  struct Side {
    JobThread& thread;
    LogStore& log;
    IdSource& ids;
  };

  /// All must outlive both threads.
  FileImport(Side reading, Side writing, Clock& clock, IntentQueue& results)
      : reading_(reading), writing_(writing), clock_(clock), results_(results) {}

  void look_into(const std::string& path);
  void write(const std::string& path);
  /// From any thread.
  void stop() { stopping_ = true; }

 private:
  void plan_and_write(const Side& side, const std::string& path, const std::string& text);
  void write_part(std::shared_ptr<const ImportPlan> plan, std::size_t done);

  Side reading_;
  Side writing_;
  Clock& clock_;
  IntentQueue& results_;
  std::atomic<bool> stopping_ = false;
};

}  // namespace rackside::kiosk

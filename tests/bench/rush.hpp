#pragma once
// Everything else that can go on beside a hand's input: a camera that delivers, the log exported
// and the collection read and forecast, again and again.

#include <atomic>
#include <filesystem>
#include <thread>
#include <vector>

#include "kiosk/frames/frame_source.hpp"
#include "tests/bench/timed_kiosk.hpp"

namespace rackside::bench {

/// Thirty pictures a second, no two alike, as a hand-held tub gives them: paper, print and a label.
class BusyCamera final : public FrameSource {
 public:
  BusyCamera();
  Result<std::optional<GreyImage>> next(std::chrono::milliseconds patience) override;
  void interrupt() override {}
  [[nodiscard]] std::string name() const override { return "camera of the bench"; }

  static inline std::atomic<bool> delivering = false;
  static inline std::atomic<int> delivered = 0;

 private:
  std::vector<GreyImage> pictures_;
};

class Rush {
 public:
  /// Stands still until it begins. Both must outlive it.
  Rush(TimedKiosk& kiosk, const std::filesystem::path& log);
  ~Rush();
  Rush(const Rush&) = delete;
  Rush& operator=(const Rush&) = delete;

  void begin();
  [[nodiscard]] int exports() const { return exports_; }

 private:
  void export_again(const std::filesystem::path& log);
  void read_again();

  TimedKiosk& kiosk_;
  std::atomic<bool> going_ = false, over_ = false;
  std::atomic<int> exports_ = 0;
  std::thread exporting_, reading_;
};

}  // namespace rackside::bench

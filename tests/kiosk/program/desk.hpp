#pragma once
// The real kiosk in a real window on a virtual display, worked by key strokes and clicks.

#include <chrono>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "core/collection/collection.hpp"
#include "tests/kiosk/program/process.hpp"

namespace rackside::tests {

class Desk {
 public:
  /// None where there is no Xvfb or xdotool.
  [[nodiscard]] static std::optional<Desk> open();
  ~Desk();
  Desk(Desk&&) = default;

  [[nodiscard]] std::string log() const { return (folder_ / "log.db").string(); }
  [[nodiscard]] std::filesystem::path folder() const { return folder_; }

  /// Returns when the kiosk listens to the scanner.
  void start_kiosk(std::vector<std::string> more = {});
  void kill_kiosk() { kiosk_.kill(); }

  /// As a keyboard-wedge scanner does: a burst of keys and Enter.
  void scan(const std::string& text);
  void scan(const Code& code) { scan(std::string(code.text())); }
  void type(const std::string& text);
  void key(const std::string& name);
  void click(double x, double y);

  /// What the kiosk has told so far, a line each.
  [[nodiscard]] std::vector<std::string> told() const;
  /// Waits until it has told `sentence` `times` times in all; false when it does not in 20 seconds.
  [[nodiscard]] bool tells(const std::string& sentence, int times = 1,
                           std::chrono::seconds patience = std::chrono::seconds{20}) const;
  void picture(const std::string& name) const;

 private:
  void wait_until_it_listens();
  Desk() = default;
  void xdotool(std::vector<std::string> words) const;

  std::filesystem::path folder_;
  std::string display_;
  Process screen_;
  Process kiosk_;
};

}  // namespace rackside::tests

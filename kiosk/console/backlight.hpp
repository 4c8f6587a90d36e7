#pragma once
// The lamp behind a panel. A black picture alone leaves it burning: a dim room stays lit, and the
// lamp ages. Source: the kernel's ABI/stable/sysfs-class-backlight, `bl_power`: 0 is on, 4 is off.

#include <filesystem>
#include <vector>

namespace rackside::kiosk {

/// Every lamp of the machine that this user may switch. A machine without one, such as one whose
/// panel hangs on HDMI, has none, and nothing happens.
class Backlight {
 public:
  explicit Backlight(const std::filesystem::path& lamps = "/sys/class/backlight");
  /// Whoever comes after finds a lit screen.
  ~Backlight() { lit(true); }
  Backlight(const Backlight&) = delete;
  Backlight& operator=(const Backlight&) = delete;

  void lit(bool on) const;
  [[nodiscard]] std::size_t count() const { return switches_.size(); }

 private:
  std::vector<std::filesystem::path> switches_;
};

}  // namespace rackside::kiosk

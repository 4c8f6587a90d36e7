#pragma once
// The keeper's PIN in a file of its own beside the log: its Argon2id hash, and how often it was
// tried in vain. Never in the log, which is copied, exported and merged.

#include <filesystem>
#include <functional>

#include "core/people/pin.hpp"

namespace rackside {

/// The file beside the log at `log`: its path with ".pin" at the end.
[[nodiscard]] std::filesystem::path pin_path(const std::filesystem::path& log);

/// One object belongs to one thread at a time.
class PinFile : public PinKeeper {
 public:
  PinFile(std::filesystem::path path, std::function<Uptime()> uptime);

  [[nodiscard]] Result<bool> is_set() override;
  [[nodiscard]] Result<void> set(std::string_view pin) override;
  [[nodiscard]] Result<PinAnswer> check(std::string_view pin) override;

 private:
  std::filesystem::path path_;
  std::function<Uptime()> uptime_;
  PinTries tries_;
};

}  // namespace rackside

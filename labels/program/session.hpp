#pragma once
// What every subcommand works with: the log, the clock, fresh ids, and how it speaks.

#include <filesystem>
#include <functional>
#include <memory>
#include <string>

#include "core/clock/system_clock.hpp"
#include "core/clock/system_ids.hpp"
#include "core/log/log_store.hpp"
#include "core/options/options.hpp"
#include "core/store/access.hpp"

namespace rackside {

class Session {
 public:
  /// Where `--log` was given; empty: the usual place.
  std::string log_option;

  /// Errors: as default_log_path.
  [[nodiscard]] Result<std::filesystem::path> log_path() const;
  /// Errors: as SqliteLog::open.
  [[nodiscard]] Result<std::unique_ptr<LogStore>> open_log(Access access) const;

  /// A log to write to that must be there already. Errors: NotFound too.
  [[nodiscard]] Result<std::unique_ptr<LogStore>> open_existing_log() const;

  Clock& clock() { return clock_; }
  IdSource& ids() { return ids_; }

 private:
  SystemClock clock_;
  SystemIds ids_{clock_};
};

/// A subcommand that was chosen and whose options were read: runs and gives back the exit code.
using Job = std::function<int()>;

/// Exit codes: all went well; something was refused or failed; the options made no sense.
inline constexpr int exit_well = 0;
inline constexpr int exit_failed = 1;
inline constexpr int exit_usage = CommandLine::wrong_words;

/// Writes the error's sentence to stderr and gives back exit_failed.
int say(const Error& error);
/// The same with exit_usage.
int say_usage(const std::string& sentence);

}  // namespace rackside

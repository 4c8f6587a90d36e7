#pragma once
// Whether a log's file is whole, looked at from the bytes up to the meaning of every event.

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

#include "core/values/result.hpp"

namespace rackside {

enum class CheckDepth {
  Quick,     // the file's structure, and every event once
  Thorough,  // also every entry of every index; half a minute for five million events
};

struct LogReport {
  std::int64_t events = 0;
  std::int64_t kiosks = 0;
  std::vector<std::string> findings;  // sentences; at most `most_findings`; none: all is well
};

inline constexpr std::size_t most_findings = 20;

/// Reads the whole log and says what does not fit: damage to the file, events that cannot be read,
/// gaps in a kiosk's numbers, events missing from an index. Changes nothing.
/// Errors: as for opening the log to read it.
[[nodiscard]] Result<LogReport> check_log(const std::filesystem::path& log,
                                          CheckDepth depth = CheckDepth::Quick);

}  // namespace rackside

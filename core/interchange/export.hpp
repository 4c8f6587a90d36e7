#pragma once
// The log as the two CSV files of the interchange: what stands, without what was taken back.
//
// Importing them into an empty log gives the same animals in the same tubs with the same records,
// and exporting that gives the same two files again. What the files have no room for is left out
// and counted: labels, rounds, rules, moves of tubs (a tub's present place is in animals.csv), tubs
// that nobody lives in, the moment an animal was entered, and the rack or the note where a reading
// has both.

#include <functional>
#include <map>
#include <string>
#include <string_view>

#include "core/log/log_store.hpp"

namespace rackside {

struct ExportSummary {
  std::int64_t animals = 0;
  std::int64_t events = 0;                       // rows of events.csv
  std::map<std::string, std::int64_t> left_out;  // by kind

  bool operator==(const ExportSummary&) const = default;
};

using WriteText = std::function<void(std::string_view)>;

/// Writes piece by piece; holds the events of one animal at a time. Errors: those of reading the
/// log.
[[nodiscard]] Result<ExportSummary> export_log(LogStore& log, const WriteText& animals,
                                               const WriteText& events);

}  // namespace rackside

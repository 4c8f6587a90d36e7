#pragma once
// Records from two CSV files into the log. Every row is looked at before any is taken over: one bad
// row, and nothing of either file is.
//
//   - An animal is known by its key. One that is in the log already is passed over; a cell that
//     contradicts the log is refused, because importing adds and never changes.
//   - A row of events.csv that is in the log already is passed over (see known_rows.hpp), so that
//     the same file can be imported again after it grew.
//   - A tub without a code gets a new one. A code that is one of ours and not in this log comes
//   from
//     another log, and its tub is made known here.
//   - An animal came on the day it was acquired, else born, else with its first event. Events from
//     before that day are taken over as they are.
//   - Rows of the same day stay in the order of the file.

#include <optional>
#include <string>
#include <string_view>

#include "core/clock/clock.hpp"
#include "core/clock/id_source.hpp"
#include "core/log/log_store.hpp"

namespace rackside {

struct SourceFile {
  std::string name;  // for sentences
  std::string_view text;
};

/// Which of the two files this is: the one with a column `event` has events.
enum class FileKind { Animals, Events };
[[nodiscard]] FileKind kind_of_file(std::string_view text);

struct ImportPlan {
  std::vector<Draft> drafts;  // in this order
  std::int64_t animals = 0;
  std::int64_t tubs = 0;
  std::int64_t events = 0;
  std::int64_t animals_known = 0;  // rows that were in the log already
  std::int64_t events_known = 0;
};

/// What is to be written to take over the files. Errors: BadInput with file, line and column in
/// `where` and the reason in the sentence; whatever keeps the log from being read.
[[nodiscard]] Result<ImportPlan> plan_import(const std::optional<SourceFile>& animals,
                                             const std::optional<SourceFile>& events, LogStore& log,
                                             Clock& clock, IdSource& ids);

}  // namespace rackside

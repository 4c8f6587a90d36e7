#pragma once
// From the words of labels to paper, and back into the log what was printed.

#include <functional>
#include <vector>

#include "labels/label/label_content.hpp"
#include "labels/program/print_options.hpp"

namespace rackside {

/// Whether labels could be printed with these options, found out before anything is written.
/// Errors: as settings_from, check_output and plan_sheet.
[[nodiscard]] Result<void> check_print(const Session& session, const PrintOptions& options);

/// What to do once labels with these codes came out.
using CameOut = std::function<Result<void>(const std::vector<Code>&)>;

/// Plans, proves, writes or prints, and says on stdout what it did. Gives back the exit code:
/// exit_failed when a label was held back, or nothing came out.
int print_labels(Session& session, const std::vector<LabelContent>& contents,
                 const PrintOptions& options, const CameOut& came_out);

/// The same for tubs: what came out is recorded in the log.
int print_tub_labels(Session& session, LogStore& log, const std::vector<LabelContent>& contents,
                     const PrintOptions& options, const std::string& by);

}  // namespace rackside

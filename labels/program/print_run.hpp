#pragma once
// A print run as the program tells it: on stdout what came out, on stderr what did not.

#include <functional>
#include <vector>

#include "labels/label/label_content.hpp"
#include "labels/program/print_options.hpp"

namespace rackside {

/// What to do once labels with these codes came out.
using CameOut = std::function<Result<void>(const std::vector<Code>&)>;

/// Gives back the exit code: exit_failed when a label was held back, or nothing came out.
int print_and_tell(Session& session, const std::vector<LabelContent>& contents,
                   const PrintOptions& options, const CameOut& came_out);

/// The same for tubs: what came out is recorded in the log.
int print_tub_labels(Session& session, LogStore& log, const std::vector<LabelContent>& contents,
                     const PrintOptions& options, const std::string& by);

}  // namespace rackside

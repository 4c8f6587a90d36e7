#pragma once
// From the words of labels to paper, and back into the log what was printed.

#include <vector>

#include "labels/label/label_content.hpp"
#include "labels/program/print_options.hpp"

namespace rackside {

/// Plans, proves, writes or prints, and records what came out; says on stdout what it did. Gives
/// back the exit code: exit_failed when a label was held back or nothing came out.
int print_labels(Session& session, LogStore& log, const std::vector<LabelContent>& contents,
                 const PrintOptions& options, const std::string& by);

}  // namespace rackside

#pragma once
// The options that say which tubs.

#include <string>
#include <vector>

#include "core/options/options.hpp"
#include "labels/batch/label_contents.hpp"
#include "labels/program/session.hpp"

namespace rackside {

struct TubOptions {
  std::vector<std::string> tubs;
  std::string rack;
  std::string shelf;
  std::string source;
  bool all = false;
  bool not_stuck_on = false;

  /// Whether anything was asked for at all.
  [[nodiscard]] bool asked() const {
    return !tubs.empty() || !rack.empty() || !source.empty() || all || not_stuck_on;
  }
};

/// What to say when nothing was.
inline constexpr const char* which_tubs_sentence =
    "Say which tubs: --tub CODE, --rack R (and --shelf S), --source SAC, --all, or --not-stuck-on.";

void add_tub_options(Vocabulary& command, TubOptions& options);

/// What stands on the labels of these tubs. Errors: as parse_typed_code, selected_tubs, and reading
/// the log.
[[nodiscard]] Result<std::vector<LabelContent>> contents_for(LogStore& log,
                                                             const TubOptions& options);

}  // namespace rackside

#pragma once
// From readings to openings: a code held in view opens once, and again only after it has left.
// Pure: time is handed in.

#include <chrono>
#include <map>
#include <optional>
#include <vector>

#include "labels/reader/sighting.hpp"

namespace rackside {

using ViewTime = std::chrono::milliseconds;

struct ViewLimits {
  ViewTime absence{1000};  // a code unread for so long has left; single frames often miss
  ViewTime settle{300};    // with another opened code in view, a new one must stay nearest so long
};

class ViewWatch {
 public:
  explicit ViewWatch(ViewLimits limits = {}) : limits_(limits) {}

  /// What one frame showed, nearest to the aim first. The code to open now, if any; or the refusal
  /// of a label that is not ours, said once while it is in view and only when none of ours is.
  [[nodiscard]] std::optional<Result<Code>> shown(const std::vector<Sighting>& sightings,
                                                  ViewTime now);

 private:
  struct Visit {
    ViewTime last_seen;
    bool opened = false;
  };

  void note(const std::vector<Sighting>& sightings, ViewTime now);
  [[nodiscard]] bool another_opened(const Code& code) const;
  [[nodiscard]] bool settled(const Code& code, ViewTime now);

  ViewLimits limits_;
  std::map<Code, Visit> visits_;
  std::optional<ViewTime> stranger_seen_;
  std::optional<Code> candidate_;
  ViewTime candidate_since_{0};
};

}  // namespace rackside

#include "kiosk/camera/view_watch.hpp"

#include <algorithm>

namespace rackside {

std::optional<Result<Code>> ViewWatch::shown(const std::vector<Sighting>& sightings, ViewTime now) {
  const bool stranger_stays = stranger_seen_ && now - *stranger_seen_ <= limits_.absence;
  note(sightings, now);
  const auto ours = std::ranges::find_if(
      sightings, [](const Sighting& sighting) { return sighting.code.has_value(); });
  if (ours == sightings.end()) {
    candidate_.reset();
    if (sightings.empty() || stranger_stays) return std::nullopt;
    return sightings.front().code;
  }
  Visit& visit = visits_.at(*ours->code);
  if (!settled(*ours->code, now) || visit.opened) return std::nullopt;
  visit.opened = true;
  return ours->code;
}

void ViewWatch::note(const std::vector<Sighting>& sightings, ViewTime now) {
  std::erase_if(visits_,
                [&](const auto& entry) { return now - entry.second.last_seen > limits_.absence; });
  for (const Sighting& sighting : sightings)
    if (sighting.code)
      visits_[*sighting.code].last_seen = now;
    else
      stranger_seen_ = now;
}

bool ViewWatch::another_opened(const Code& code) const {
  return std::ranges::any_of(
      visits_, [&](const auto& entry) { return entry.second.opened && entry.first != code; });
}

bool ViewWatch::settled(const Code& code, ViewTime now) {
  if (candidate_ != code) {
    candidate_ = code;
    candidate_since_ = now;
  }
  return !another_opened(code) || now - candidate_since_ >= limits_.settle;
}

}  // namespace rackside

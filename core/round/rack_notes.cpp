#include "core/round/rack_notes.hpp"

#include <fmt/format.h>

#include "core/collection/place.hpp"
#include "core/words/sentences.hpp"

namespace rackside {
namespace {

// An offer older than this says nothing about today's air.
constexpr std::chrono::days lately{14};

struct RackTally {
  int offered = 0;
  int refused = 0;
  int near_moult = 0;
};

struct NaturalOrder {
  bool operator()(const std::string& a, const std::string& b) const {
    if (natural_before(a, b)) return true;
    return !natural_before(b, a) && a < b;
  }
};
using Tallies = std::map<std::string, RackTally, NaturalOrder>;

Tallies count(const Collection& collection, const std::map<AnimalId, Forecast>& forecasts,
              const CareRules& rules, Day today) {
  Tallies tallies;
  for (const auto& [id, animal] : collection.animals) {
    if (animal.life != Life::Living || !animal.enclosure) continue;
    const EnclosureState* tub = collection.enclosure(*animal.enclosure);
    if (!tub) continue;
    RackTally& tally = tallies[tub->place.rack];
    if (animal.last_offer && today - animal.last_offer->when.moment.day() <= lately) {
      ++tally.offered;
      if (animal.last_offer->outcome != Outcome::Took) ++tally.refused;
    }
    const auto forecast = forecasts.find(id);
    if (forecast != forecasts.end() && forecast->second.p_premoult > rules.withhold_above)
      ++tally.near_moult;
  }
  return tallies;
}

std::string rack_name(const std::string& rack) {
  return rack.empty() ? "Tubs without a rack" : fmt::format("Rack {}", rack);
}

template <class Reading>
bool is_good(const std::optional<Reading>& reading, const CareRules& rules, Moment now) {
  if (!reading) return false;
  const double age = days_between(reading->when.moment.utc, now.utc);
  return age >= 0 && age <= rules.reading_good_for;
}

std::string refusal_note(const std::string& rack, const RackTally& tally, const RackClimate& air,
                         const CareRules& rules, Moment now) {
  const std::string beginning = fmt::format("{}: {} of {} refused lately", rack_name(rack),
                                            tally.refused, count_of(tally.offered, "tub"));
  if (!is_good(air.temperature, rules, now))
    return beginning + ". Read the temperature before you look for other causes.";
  const Celsius temperature = air.temperature->value;
  const std::string degrees = temperature_words(temperature, rules.wording.units);
  if (temperature.value < rules.cold_below)
    return fmt::format("{}, and it is {}. Too cold: warm it first.", beginning, degrees);
  return fmt::format("{}, though it is {}. Look for another cause.", beginning, degrees);
}

}  // namespace

std::vector<RackNote> rack_notes(const Collection& collection,
                                 const std::map<AnimalId, Forecast>& forecasts,
                                 const CareRules& rules, const RoomClimate& climate, Moment now,
                                 std::string_view only) {
  std::vector<RackNote> notes;
  for (const auto& [rack, tally] : count(collection, forecasts, rules, now.day())) {
    if (!only.empty() && rack != only) continue;
    const RackClimate air = climate.at(rack);
    if (tally.offered >= rules.rack_refuses_tubs &&
        tally.refused >= rules.rack_refuses_share * tally.offered)
      notes.push_back({rack, refusal_note(rack, tally, air, rules, now)});
    if (tally.near_moult > 0 && is_good(air.humidity, rules, now) &&
        air.humidity->value.value < rules.dry_below)
      notes.push_back(
          {rack, fmt::format("{}: {:.0f} % humidity and {} near. Too dry: mist.", rack_name(rack),
                             air.humidity->value.value, count_of(tally.near_moult, "moult"))});
  }
  return notes;
}

}  // namespace rackside

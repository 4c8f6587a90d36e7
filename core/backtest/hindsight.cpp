#include "core/backtest/hindsight.hpp"

#include <algorithm>
#include <cmath>

namespace rackside {

std::optional<MoultSpan> next_on_record(const Evidence& animal, double day) {
  for (const MoultSpan& moult : animal.moults)
    if (moult.latest > day) return moult;
  return std::nullopt;
}

namespace {

std::vector<const Observation*> offers_between(const Evidence& animal, double from, double to) {
  std::vector<const Observation*> offers;
  for (const Observation& o : animal.observations)
    if (o.kind == Observation::Kind::Offer && o.day > from && o.day < to) offers.push_back(&o);
  return offers;
}

// The place in `offers` from which on meals were no longer taken: the split that the fewest offers
// speak against, the latest of them.
std::size_t split(const std::vector<const Observation*>& offers) {
  int agree = 0;
  for (const Observation* offer : offers) agree += offer->outcome == Outcome::Took ? 0 : 1;
  int best = agree;
  std::size_t place = 0;
  for (std::size_t k = 0; k < offers.size(); ++k) {
    agree += offers[k]->outcome == Outcome::Took ? 1 : -1;
    if (agree >= best) {
      best = agree;
      place = k + 1;
    }
  }
  return place;
}

}  // namespace

std::optional<bool> was_in_premoult(const Evidence& animal, double day) {
  constexpr double near_the_end =
      21;  // an offer this close to the moult says what its end was like
  const auto end = std::ranges::find_if(animal.moults, [day](auto& m) { return m.middle() > day; });
  if (end == animal.moults.end()) return std::nullopt;
  const double began = end == animal.moults.begin() ? animal.arrived : (end - 1)->latest;
  const auto offers = offers_between(animal, began, end->middle());
  if (offers.empty()) return std::nullopt;
  const std::size_t place = split(offers);
  if (place > 0 && day <= offers[place - 1]->day) return false;
  if (place == offers.size() || day < offers[place]->day) return std::nullopt;
  if (end->middle() - offers.back()->day > near_the_end) return std::nullopt;
  return true;
}

bool was_dangerous(const Evidence& animal, double day) {
  return std::ranges::any_of(animal.moults, [day](const MoultSpan& moult) {
    return std::abs(moult.middle() - day) <= danger_days;
  });
}

}  // namespace rackside

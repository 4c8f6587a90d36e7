#include "demo/collection/life.hpp"

#include <algorithm>
#include <cmath>

namespace rackside::demo {

using std::chrono::days;

Life::Life(const Species& species, int instar, Day acquired, Dice& dice)
    : species_(&species), instar_(instar), female_(dice.chance(0.55)) {
  begin_cycle(acquired - days{dice.between(0, 30)}, dice);
}

void Life::begin_cycle(Day start, Dice& dice) {
  moulted_ = start;
  const double usual = adult() ? 340 : 38 * std::pow(1.3, instar_ - 2);
  const double length = mature_male() ? 100'000 : species_->pace * usual * dice.spread(0.14);
  next_moult_ = start + days{std::lround(length)};
  premoult_ = next_moult_ - days{std::lround(std::min(75.0, length * 0.28 * dice.spread(0.25)))};
  if (dice.chance(species_->fasts_a_year * length / 365)) {
    fast_from_ = start + days{std::lround(length * 0.3)};
    fast_to_ = fast_from_ + days{dice.between(20, 60)};
  }
}

void Life::live_on(Day day, Dice& dice) {
  if (day < next_moult_) return;
  ++instar_;
  shed_lies_ = true;
  begin_cycle(day, dice);
  if (mature_male() && !male_since_) male_since_ = day;
}

bool Life::takes(Day day, Dice& dice) const {
  const bool soft = day - moulted_ < days{6};
  const bool fasts = day >= premoult_ || (day >= fast_from_ && day < fast_to_);
  return dice.chance(soft ? 0.05 : fasts ? 0.12 : 0.92);
}

SignSet Life::shows(Day day, Dice& dice) const {
  SignSet signs;
  const auto show = [&](Sign sign, double p) {
    if (dice.chance(p)) signs.insert(sign);
  };
  const bool premoult = day >= premoult_;
  if (premoult && species_->shows_patch && next_moult_ - day < days{25})
    show(Sign::DarkAbdomen, 0.75);
  if (premoult && species_->seals_in) show(Sign::SealedIn, 0.45);
  if (premoult) show(Sign::PlumpAbdomen, 0.3);
  show(Sign::Sluggish, premoult ? 0.25 : 0.01);
  if (shed_lies_) show(Sign::BrighterColours, 0.5);
  return signs;
}

double Life::leg_span() const {
  return species_->adult_span_mm * std::pow(1.28, instar_ - species_->adult_instar);
}

}  // namespace rackside::demo

#include "tests/core/forecast/oracle.hpp"

#include <algorithm>
#include <cmath>

namespace rackside::tests {
namespace {

struct Path {
  double log_weight = 0, next_moult = 0;
  bool premoult = false;
};

class Sampler {
 public:
  Sampler(const World& world, const InventedAnimal& animal, const Evidence& evidence, double as_of,
          Dice& dice)
      : world_(world), animal_(animal), evidence_(evidence), as_of_(as_of), dice_(dice) {
    since_ = evidence.moults.empty() ? evidence.arrived : evidence.moults.back().latest;
    for (const Observation& o : evidence.observations)
      if (o.day > since_ && o.day <= as_of) seen_.push_back(&o);
  }

  Path draw() {
    Path path;
    auto [cycle, moult] = first_cycle();
    path.next_moult = cycle.ends;
    std::size_t k = 0;
    while (cycle.ends < as_of_) {
      weigh(path, cycle, k);
      const bool looked = std::ranges::any_of(seen_, [&](auto* o) {
        return o->kind == Observation::Kind::Look && o->day > cycle.ends;
      });
      if (looked) path.log_weight += std::log(world_.missed + 1e-9);
      cycle = next_cycle(world_, animal_.nature, ++moult, cycle.ends, dice_);
    }
    weigh(path, cycle, k);
    path.premoult = cycle.in_premoult(as_of_);
    return path;
  }

 private:
  std::pair<TrueCycle, int> first_cycle() {
    if (!evidence_.moults.empty()) {
      // The moult as it truly was, or the last one before the shed was found.
      std::size_t last = 0;
      for (std::size_t i = 0; i < animal_.cycles.size(); ++i)
        if (animal_.recorded[i] && animal_.cycles[i].ends <= since_ + 0.5) last = i;
      const int moult = static_cast<int>(last) - 1;
      return {next_cycle(world_, animal_.nature, moult, animal_.cycles[last].ends, dice_), moult};
    }
    const double length = std::exp(animal_.nature.log_days);
    double day = evidence_.arrived - length * (2 + std::uniform_real_distribution<double>{}(dice_));
    for (int moult = -2;; ++moult) {
      const TrueCycle cycle = next_cycle(world_, animal_.nature, moult, day, dice_);
      if (cycle.ends > evidence_.arrived) return {cycle, moult};
      day = cycle.ends;
    }
  }

  void weigh(Path& path, const TrueCycle& cycle, std::size_t& k) const {
    for (; k < seen_.size() && seen_[k]->day < cycle.ends; ++k) {
      const Observation& o = *seen_[k];
      if (o.kind == Observation::Kind::Offer) {
        const double refuses = refusal_chance(world_, animal_.nature, cycle, o.day);
        path.log_weight += std::log(o.outcome == Outcome::Took ? 1 - refuses : refuses);
      } else {
        for (const Sign sign : all_signs) {
          const double chance =
              std::clamp(sign_chance(world_, animal_.nature, cycle, o.day, sign), 1e-4, 0.9999);
          path.log_weight += std::log(o.signs.has(sign) ? chance : 1 - chance);
        }
      }
    }
  }

  const World& world_;
  const InventedAnimal& animal_;
  const Evidence& evidence_;
  double as_of_, since_ = 0;
  Dice& dice_;
  std::vector<const Observation*> seen_;
};

}  // namespace

Oracle consult(const World& world, const InventedAnimal& animal, const Evidence& evidence,
               double as_of, int paths, Dice& dice) {
  Sampler sampler(world, animal, evidence, as_of, dice);
  std::vector<Path> drawn;
  double peak = -HUGE_VAL;
  for (int i = 0; i < paths; ++i) {
    drawn.push_back(sampler.draw());
    peak = std::max(peak, drawn.back().log_weight);
  }
  Oracle oracle;
  double total = 0, squares = 0;
  for (Path& path : drawn) {
    const double weight = path.log_weight = std::exp(path.log_weight - peak);
    total += weight;
    squares += weight * weight;
    if (path.premoult) oracle.p_premoult += weight;
  }
  oracle.p_premoult /= total;
  oracle.effective = total * total / squares;
  std::ranges::sort(drawn, {}, &Path::next_moult);
  double below = 0;
  std::size_t next = 1;
  for (const Path& path : drawn) {
    below += path.log_weight / total;
    for (; next < 20 && below >= static_cast<double>(next) / 20 - 1e-12; ++next)
      oracle.quantiles.push_back(path.next_moult - as_of);
  }
  return oracle;
}

}  // namespace rackside::tests

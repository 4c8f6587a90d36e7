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

  Path draw(const Nature& nature) {
    Path path;
    auto [cycle, moult] = first_cycle(nature);
    path.next_moult = cycle.ends;
    std::size_t k = 0;
    while (cycle.ends < as_of_) {
      weigh(path, nature, cycle, k);
      const bool looked = std::ranges::any_of(seen_, [&](auto* o) {
        return o->kind == Observation::Kind::Look && o->day > cycle.ends;
      });
      if (looked) path.log_weight += std::log(world_.missed + 1e-9);
      cycle = next_cycle(world_, nature, ++moult, cycle.ends, dice_);
    }
    weigh(path, nature, cycle, k);
    path.premoult = cycle.in_premoult(as_of_);
    return path;
  }

  // As many natures as paths, each as often as the animal's past makes it likely.
  std::vector<Nature> natures(std::size_t paths) {
    std::vector<Nature> drawn(paths, animal_.nature);
    std::vector<double> weights;
    const Past known = past();
    for (Nature& nature : drawn) {
      give_own_nature(world_, nature, dice_);
      weights.push_back(log_likelihood(known, nature));
    }
    const double peak = std::ranges::max(weights);
    for (double& weight : weights) weight = std::exp(weight - peak);
    std::discrete_distribution<std::size_t> choose(weights.begin(), weights.end());
    std::vector<Nature> chosen;
    for (std::size_t i = 0; i < paths; ++i) chosen.push_back(drawn[choose(dice_)]);
    return chosen;
  }

 private:
  // The moult as it truly was, or the last one before the shed was found.
  [[nodiscard]] std::size_t last_on_record() const {
    std::size_t last = 0;
    for (std::size_t i = 0; i < animal_.cycles.size(); ++i)
      if (animal_.recorded[i] && animal_.cycles[i].ends <= since_ + 0.5) last = i;
    return last;
  }

  // What the past says of the animal's own nature: how much it grew in each cycle since it came,
  // and what it did with meals while it was eating.
  struct Past {
    std::vector<std::pair<int, double>> grown;  // by the number of moults before
    double taken = 0, refused = 0;
  };
  [[nodiscard]] Past past() const {
    Past past;
    if (evidence_.moults.empty()) return past;
    const std::size_t last = last_on_record();
    for (std::size_t i = 0; i <= last; ++i)
      if (animal_.cycles[i].begins > animal_.arrived)
        past.grown.emplace_back(static_cast<int>(i) - cycles_before,
                                growth_during(world_, animal_.nature, animal_.cycles[i]));
    for (const Observation& o : evidence_.observations) {
      const TrueCycle& cycle = animal_.cycle_on(o.day);
      if (o.day >= animal_.cycles[last].ends) break;
      const bool eating =
          o.day >= cycle.hard_until && !cycle.in_premoult(o.day) && !cycle.fasting(o.day);
      if (o.kind != Observation::Kind::Offer || !eating) continue;
      ++(o.outcome == Outcome::Took ? past.taken : past.refused);
    }
    return past;
  }
  [[nodiscard]] double log_likelihood(const Past& past, const Nature& nature) const {
    double sum = past.refused * std::log(nature.refuses_feeding) +
                 past.taken * std::log(1 - nature.refuses_feeding);
    for (const auto& [moult, grown] : past.grown)
      sum += std::log(density_of(world_, nature, moult, grown) + 1e-300);
    return sum;
  }

  std::pair<TrueCycle, int> first_cycle(const Nature& nature) {
    if (!evidence_.moults.empty()) {
      const std::size_t last = last_on_record();
      const int moult = static_cast<int>(last) + 1 - cycles_before;
      return {next_cycle(world_, nature, moult, animal_.cycles[last].ends, dice_), moult};
    }
    const double length = std::exp(nature.log_days);
    double day = evidence_.arrived -
                 length * (cycles_before + std::uniform_real_distribution<double>{}(dice_));
    for (int moult = -cycles_before;; ++moult) {
      const TrueCycle cycle = next_cycle(world_, nature, moult, day, dice_);
      if (cycle.ends > evidence_.arrived) return {cycle, moult};
      day = cycle.ends;
    }
  }

  void weigh(Path& path, const Nature& nature, const TrueCycle& cycle, std::size_t& k) const {
    for (; k < seen_.size() && seen_[k]->day < cycle.ends; ++k) {
      const Observation& o = *seen_[k];
      if (o.kind == Observation::Kind::Offer) {
        const double refuses = refusal_chance(world_, nature, cycle, o.day);
        path.log_weight += std::log(o.outcome == Outcome::Took ? 1 - refuses : refuses);
      } else {
        for (const Sign sign : all_signs) {
          const double chance =
              std::clamp(sign_chance(world_, nature, cycle, o.day, sign), 1e-4, 0.9999);
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
               double as_of, int paths, Dice& dice, Knows knows) {
  Sampler sampler(world, animal, evidence, as_of, dice);
  const bool in_season = world.season_of_adults > 0 && animal.nature.stage == Stage::Adult;
  std::vector<Nature> natures(static_cast<std::size_t>(paths), animal.nature);
  if (knows == Knows::Past && !in_season) natures = sampler.natures(natures.size());
  std::vector<Path> drawn;
  double peak = -HUGE_VAL;
  for (const Nature& nature : natures) {
    drawn.push_back(sampler.draw(nature));
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

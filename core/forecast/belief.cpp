#include "core/forecast/belief.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/forecast/normal.hpp"

namespace rackside {
namespace {

constexpr double shortest_cycle = 6;     // days; no moult is looked for sooner after another
constexpr std::size_t past_cells = 60;   // at most
constexpr double longest_premoult = 0.75;  // of a cycle

// Points of a standard normal with their weights: premoult lengths, and second cycles.
template <std::size_t N>
struct NormalPoints {
  std::array<double, N> z{}, weight{};
  explicit NormalPoints(double reach) {
    double sum = 0;
    for (std::size_t i = 0; i < N; ++i) {
      z[i] = reach * (2.0 * static_cast<double>(i) / (N - 1) - 1);
      sum += weight[i] = normal_density(z[i]);
    }
    for (double& w : weight) w /= sum;
  }
};

const NormalPoints<15> premoult_points(3.2);
const NormalPoints<7> coarse_premoult_points(2.4);
const NormalPoints<15> cycle_points(2.8);

double mixture_cdf(const LengthMixture& mixture, double noise, double length) {
  if (length <= 0) return 0;
  const double log_length = std::log(length);
  double sum = 0;
  for (const LengthComponent& c : mixture)
    sum += c.weight * normal_cdf((log_length - c.mean) / std::sqrt(c.deviation * c.deviation + noise));
  return sum;
}

double mixture_mean(const LengthMixture& mixture) {
  double sum = 0;
  for (const LengthComponent& c : mixture)
    sum += c.weight * std::exp(c.mean + c.deviation * c.deviation / 2);
  return sum;
}

// What follows a moult that nobody saw, for one day on which it may have been.
struct After {
  double likelihood = 0;  // of all observations after it, times exp(-scale)
  double premoult = 0;    // the part of it in which the animal is in premoult now
  double hardening = 0;
  double fasting = 0;
};

class Enumeration {
 public:
  Enumeration(const Character& character, const RunningCycle& cycle, double as_of)
      : character_(character), cycle_(cycle), as_of_(as_of),
        start_((cycle.start_earliest + cycle.start_latest) / 2) {
    premoult_.push_back(0);
    for (const Step& step : cycle.steps)
      premoult_.push_back(premoult_.back() + std::log(step.premoult));
    opening_.run(cycle.steps,
                 {cycle.start_latest, cycle.from_arrival, character.length[0].mean}, as_of,
                 character.habits);
  }

  Belief run() {
    lay_cells();
    weigh_unseen();
    Belief belief;
    belief.cells = cells_;
    const double peak = highest();
    double total = 0, unseen = 0;
    for (std::size_t i = 0; i < cells_.size(); ++i) {
      const double weight = weigh(i, peak, belief);
      belief.cells[i].probability = weight;
      total += weight;
      if (i < past_) unseen += weight;
    }
    for (MoultCell& cell : belief.cells) cell.probability /= total;
    for (double Belief::*part : {&Belief::p_premoult, &Belief::p_hardening, &Belief::p_fasting})
      belief.*part = std::clamp(belief.*part / total, 0.0, 1.0);
    belief.p_moulted_unseen = std::clamp(unseen / total, 0.0, 1.0);
    return belief;
  }

 private:
  // Cells ------------------------------------------------------------------------------------

  void lay_cells() {
    const double first = cycle_.from_arrival ? start_ : cycle_.start_latest + shortest_cycle;
    if (first < as_of_) {
      const double width = std::max(1.0, (as_of_ - first) / past_cells);
      past_ = static_cast<std::size_t>(std::ceil((as_of_ - first) / width));
      for (std::size_t i = 0; i < past_; ++i)
        add_cell(as_of_ - width * static_cast<double>(past_ - i),
                 as_of_ - width * static_cast<double>(past_ - i - 1));
      if (!cells_.empty()) cells_.front().from = std::max(cells_.front().from, first - width);
    }
    const double horizon = std::max(farthest(), as_of_ + (as_of_ - start_) / 2 + 60);
    double from = std::max(first, as_of_);
    for (double width = 1; from < horizon; width *= from - as_of_ > 45 ? 1.06 : 1) {
      add_cell(from, from + width);
      from += width;
    }
    fill_cells();
  }
  void add_cell(double from, double to) { cells_.push_back({from, to, 0}); }
  [[nodiscard]] double farthest() const {
    const LengthComponent& wide = character_.length[1];
    return character_.clock.after(start_, std::exp(wide.mean + 3.2 * wide.deviation));
  }

  // Before anything was observed in this cycle.
  void fill_cells() {
    const double days = std::exp(character_.length[0].mean);
    const double width = cycle_.start_latest - cycle_.start_earliest;
    const double noise = width * width / (12 * days * days);
    const double mean = mixture_mean(character_.length);
    double below = mixture_cdf(character_.length, noise, elapsed(cells_.front().from));
    for (MoultCell& cell : cells_) {
      const double at = mixture_cdf(character_.length, noise, elapsed(cell.to));
      // From an arrival, the rest of a cycle has density S(r) / E[length].
      cell.probability = cycle_.from_arrival
                             ? (1 - (below + at) / 2) *
                                   (elapsed(cell.to) - elapsed(cell.from)) / mean
                             : at - below;
      cell.probability *= season_tilt(character_.season, (cell.from + cell.to) / 2);
      below = at;
    }
  }
  [[nodiscard]] double elapsed(double day) const { return character_.clock.between(start_, day); }

  // Observations -----------------------------------------------------------------------------

  [[nodiscard]] std::size_t steps_before(double day) const {
    const auto& steps = cycle_.steps;
    return static_cast<std::size_t>(
        std::ranges::partition_point(steps, [day](const Step& s) { return s.day < day; }) -
        steps.begin());
  }
  // Seen on its back: a moult within two days of it is what that means.
  [[nodiscard]] double on_its_back(double moult, double half_width) const {
    double factor = 0;
    for (const Step& step : cycle_.steps)
      if (step.on_its_back && moult + half_width > step.day - 0.5 && moult - half_width < step.day + 2)
        factor += std::log(character_.habits.last_hours_factor);
    return factor;
  }
  [[nodiscard]] double unnoticed(double moult) const {
    const auto visits = static_cast<double>(
        cycle_.visits.end() - std::ranges::upper_bound(cycle_.visits, moult));
    return character_.unseen_share +
           (1 - character_.unseen_share) * std::pow(1 - character_.noticed_a_visit, visits);
  }

  // Unseen moults, the latest first: what follows one may hold another ---------------------------

  void weigh_unseen() {
    after_.assign(past_, {});
    second_lengths();
    const double all = static_cast<double>(cycle_.steps.size());
    scale_ = all > 0 ? opening_.log_likelihood().back() : 0;
    for (std::size_t i = past_; i-- > 0;) after_[i] = after_unseen(i);
  }
  void second_lengths() {
    for (const LengthComponent& c : character_.next_length)
      for (std::size_t k = 0; k < cycle_points.z.size(); ++k)
        lengths_.push_back({c.weight * cycle_points.weight[k],
                            std::exp(c.mean + c.deviation * cycle_points.z[k])});
  }
  After after_unseen(std::size_t cell) {
    const double moult = (cells_[cell].from + cells_[cell].to) / 2;
    const std::size_t first = steps_before(moult);
    const auto rest = std::span(cycle_.steps).subspan(first);
    second_.run(rest, {moult, false, character_.next_length[0].mean}, as_of_, character_.habits);
    const std::vector<double>& feeding = second_.log_likelihood();
    const double until_now = std::exp(feeding.back() - rest_scale(first));
    After after;
    for (const SecondLength& length : lengths_) {
      const double next = character_.clock.after(moult, length.days);
      const std::size_t last = steps_before(next);
      const double median = character_.habits.premoult.mean_for(std::log(length.days));
      for (std::size_t k = 0; k < coarse_premoult_points.z.size(); ++k) {
        const double days = std::min(
            longest_premoult * (next - moult),
            std::exp(median + character_.habits.premoult.spread * coarse_premoult_points.z[k]));
        const double weight = length.weight * coarse_premoult_points.weight[k];
        const double begins = next - days;
        if (begins >= as_of_) {
          after.likelihood += weight * until_now;
          after.hardening += weight * until_now * second_.hardening();
          after.fasting += weight * until_now * second_.fasting();
          continue;
        }
        const std::size_t turn = std::max(first, steps_before(begins));
        double seen = feeding[turn - first] + premoult_[std::max(turn, last)] - premoult_[turn];
        if (next >= as_of_) {
          const double likelihood = weight * std::exp(seen - rest_scale(first));
          after.likelihood += likelihood;
          after.premoult += likelihood;
        } else {
          add_third(after, cell, next, weight * unnoticed(next), seen - rest_scale(first));
        }
      }
    }
    return after;
  }
  void add_third(After& after, std::size_t cell, double moult, double weight,
                 double log_seen) const {
    const double width = cells_[past_ - 1].to - cells_[past_ - 1].from;
    const double place = std::max((moult - cells_.front().to) / width + 1, 0.0);
    const std::size_t third =
        std::clamp(static_cast<std::size_t>(place), cell + 1, std::max(cell + 1, past_ - 1));
    if (third >= past_) return;
    const std::size_t first = steps_before((cells_[third].from + cells_[third].to) / 2);
    const After& then = after_[third];
    const double factor = weight * std::exp(log_seen + rest_scale(first));
    after.likelihood += factor * then.likelihood;
    after.premoult += factor * then.premoult;
    after.hardening += factor * then.hardening;
    after.fasting += factor * then.fasting;
  }
  // Keeps exponents near 0: the log likelihood of the steps from `first` on, had nothing happened.
  [[nodiscard]] double rest_scale(std::size_t first) const {
    return scale_ - opening_.log_likelihood()[first];
  }

  // The whole cycle --------------------------------------------------------------------------------

  [[nodiscard]] double highest() const {
    double peak = -HUGE_VAL;
    const auto& feeding = opening_.log_likelihood();
    for (std::size_t turn = 0; turn < feeding.size(); ++turn)
      peak = std::max(peak, feeding[turn] + premoult_.back() - premoult_[turn]);
    for (std::size_t i = 0; i < past_; ++i)
      if (after_[i].likelihood > 0) {
        const std::size_t first = steps_before((cells_[i].from + cells_[i].to) / 2);
        for (std::size_t turn = 0; turn <= first; ++turn)
          peak = std::max(peak, feeding[turn] + premoult_[first] - premoult_[turn] +
                                    std::log(after_[i].likelihood) + rest_scale(first));
      }
    return peak;
  }

  double weigh(std::size_t index, double peak, Belief& belief) const {
    const MoultCell& cell = cells_[index];
    if (!(cell.probability > 0)) return 0;
    const double moult = (cell.from + cell.to) / 2;
    const bool past = index < past_;
    const std::size_t last = past ? steps_before(moult) : cycle_.steps.size();
    double base = on_its_back(moult, (cell.to - cell.from) / 2) - peak;
    if (past) base += std::log(unnoticed(moult)) + rest_scale(last);
    const auto& feeding = opening_.log_likelihood();
    const double length = cycle_.from_arrival
                              ? std::max(moult - start_, std::exp(character_.length[0].mean))
                              : moult - start_;
    const double median = character_.habits.premoult.mean_for(std::log(length));
    double sum = 0, premoult = 0, before = 0;
    for (std::size_t k = 0; k < premoult_points.z.size(); ++k) {
      const double days =
          std::min(longest_premoult * length,
                   std::exp(median + character_.habits.premoult.spread * premoult_points.z[k]));
      const double begins = moult - days;
      const double prior = cell.probability * premoult_points.weight[k];
      const std::size_t turn = std::min(last, steps_before(begins));
      const double weight =
          prior * std::exp(feeding[turn] + premoult_[last] - premoult_[turn] + base);
      sum += weight;
      if (begins <= as_of_) premoult += weight;
      else before += weight;
    }
    if (!past) {
      belief.p_premoult += premoult;
      belief.p_hardening += before * opening_.hardening();
      belief.p_fasting += before * opening_.fasting();
      return sum;
    }
    belief.p_premoult += sum * after_[index].premoult;
    belief.p_hardening += sum * after_[index].hardening;
    belief.p_fasting += sum * after_[index].fasting;
    return sum * after_[index].likelihood;
  }

  struct SecondLength {
    double weight, days;
  };

  const Character& character_;
  const RunningCycle& cycle_;
  double as_of_;
  double start_;
  std::vector<double> premoult_;  // log likelihood of the first k steps in premoult
  Opening opening_, second_;
  std::vector<MoultCell> cells_;
  std::size_t past_ = 0;
  std::vector<After> after_;
  std::vector<SecondLength> lengths_;
  double scale_ = 0;
};

}  // namespace

Belief believe(const Character& character, const RunningCycle& cycle, double as_of) {
  return Enumeration(character, cycle, as_of).run();
}

double season_tilt(const std::array<double, 4>& season, double day) {
  if (season[0] == 0 && season[1] == 0 && season[2] == 0 && season[3] == 0) return 1;
  const double angle = 2 * std::numbers::pi * day / 365.25;
  return std::exp(season[0] * std::cos(angle) + season[1] * std::sin(angle) +
                  season[2] * std::cos(2 * angle) + season[3] * std::sin(2 * angle));
}

double quantile(const Belief& belief, double p) {
  double below = 0;
  for (const MoultCell& cell : belief.cells) {
    if (below + cell.probability >= p && cell.probability > 0)
      return cell.from + (cell.to - cell.from) * std::clamp((p - below) / cell.probability, 0.0, 1.0);
    below += cell.probability;
  }
  return belief.cells.back().to;
}

}  // namespace rackside

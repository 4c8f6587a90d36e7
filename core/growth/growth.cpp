#include "core/growth/growth.hpp"

#include <fmt/format.h>

#include <cmath>

#include "core/event/words.hpp"

namespace rackside {
namespace {

// No spider shrinks to three quarters or doubles its length in one moult (from memory): a legible
// sign of inches for centimetres, or of another animal.
constexpr double least_ratio = 0.75;
constexpr double most_ratio = 2.0;

struct Follow {
  std::vector<GrowthStep>& steps;
  const Event& event;

  void operator()(const AnimalAdded& e) const {
    if (steps.size() == 1) steps.front().instar = e.instar;
  }
  void operator()(const Moulted&) const { moulted(); }
  void operator()(const ShedFound&) const { moulted(); }
  void operator()(const Measured& e) const {
    GrowthStep& step = steps.back();
    (e.what == Measure::LegSpan ? step.leg_span : step.carapace) = e.length;
  }
  template <class Other>
  void operator()(const Other&) const {}

 private:
  void moulted() const {
    std::optional<int> instar = steps.back().instar;
    if (instar) ++*instar;
    steps.push_back(GrowthStep{event.when, instar, {}, {}});
  }
};

const std::optional<Millimetres>& measure_of(const GrowthStep& step, Measure what) {
  return what == Measure::LegSpan ? step.leg_span : step.carapace;
}

GrowthBetween between(Measure what, std::span<const GrowthStep> steps, std::size_t from,
                      std::size_t to) {
  const double whole = measure_of(steps[to], what)->value / measure_of(steps[from], what)->value;
  const double ratio = std::pow(whole, 1.0 / static_cast<double>(to - from));
  return {from, to, ratio, ratio >= least_ratio && ratio <= most_ratio};
}

std::string sentence_of(Measure what, const GrowthSummary& growth) {
  std::string word(word_of(what));
  word.front() = static_cast<char>(word.front() - 'a' + 'A');
  return fmt::format(
      "{} grew by {:.0f} % a moult over {} {}; {:.0f} to {:.0f} % is usual in spiders.", word,
      100 * (growth.ratio - 1), growth.moults, growth.moults == 1 ? "moult" : "moults",
      100 * (przibram_ratio - 1), 100 * (faber_ratio - 1));
}

}  // namespace

std::vector<GrowthStep> growth_of(std::vector<Event> events) {
  std::vector<GrowthStep> steps(1);
  for (const Event& event : standing(std::move(events)))
    std::visit(Follow{steps, event}, event.details);
  return steps;
}

std::vector<GrowthBetween> growth_in(Measure what, std::span<const GrowthStep> steps) {
  std::vector<GrowthBetween> growth;
  std::optional<std::size_t> last;
  std::optional<std::size_t> doubted;  // did not fit `last`: one of the two is wrong
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const auto& measure = measure_of(steps[i], what);
    if (!measure || !(measure->value > 0)) continue;
    if (last) {
      GrowthBetween step = between(what, steps, *last, i);
      if (doubted && !step.plausible) {
        const GrowthBetween other = between(what, steps, *doubted, i);
        if (other.plausible) step = other;
      }
      growth.push_back(step);
    }
    const bool fits = !last || growth.back().plausible;
    doubted = fits ? std::nullopt : std::optional(i);
    if (fits) last = i;
  }
  return growth;
}

std::optional<GrowthSummary> summarise_growth(Measure what, std::span<const GrowthStep> steps) {
  GrowthSummary summary;
  double log_growth = 0;
  for (const GrowthBetween& growth : growth_in(what, steps)) {
    if (!growth.plausible) continue;
    const auto moults = static_cast<int>(growth.to - growth.from);
    summary.moults += moults;
    log_growth += moults * std::log(growth.ratio);
    summary.last = *measure_of(steps[growth.to], what);
  }
  if (summary.moults == 0) return std::nullopt;
  summary.ratio = std::exp(log_growth / summary.moults);
  summary.next = Millimetres{summary.last.value * summary.ratio};
  summary.sentence = sentence_of(what, summary);
  return summary;
}

}  // namespace rackside

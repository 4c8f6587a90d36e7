#include "core/forecast/season_fit.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <span>
#include <vector>

#include "core/forecast/grown_moults.hpp"
#include "core/forecast/peak_belief.hpp"
#include "core/forecast/traces.hpp"

namespace rackside {
namespace {

constexpr std::array sharpnesses{1.0, 2.0, 4.0, 7.0, 12.0};
constexpr std::array shares{0.6, 0.95};  // of grown animals that keep to it

using BySpecies = std::map<std::string, std::vector<std::vector<GrownMoult>>>;

double log_sum(double a, double b) {
  const double high = std::max(a, b);
  if (high == -HUGE_VAL) return high;
  return high + std::log(std::exp(a - high) + std::exp(b - high));
}

struct Tried {
  double sharpness, share;
  std::size_t loosening;
};

// The log likelihood of a species' moults for each peak, to which every animal keeps or does not.
PeakWeights log_likelihoods(const std::vector<std::vector<GrownMoult>>& animals,
                            const YearBell& bell, const Tried& tried) {
  const double keeps = std::log(tried.share);
  const double does_not = std::log(1 - tried.share);
  PeakWeights sums{};
  for (const std::vector<GrownMoult>& moults : animals) {
    const Explained logs = explain(moults, bell, tried.loosening);
    for (std::size_t peak = 0; peak < season_peaks; ++peak)
      sums[peak] += log_sum(keeps + logs.by_peak[peak], does_not + logs.by_lengths);
  }
  return sums;
}

// Each species has its own peak, more likely where others have theirs.
struct Seasons {
  Season shared;  // its peaks: those of a species of which no moult is known
  std::map<std::string, PeakWeights> peaks;
  double log_evidence = 0;
};

Seasons fit(const BySpecies& moults, const Tried& tried) {
  constexpr int turns = 3;
  const YearBell bell(tried.sharpness);
  std::map<std::string, PeakWeights> likelihoods;
  Seasons seasons{.shared = {tried.sharpness, tried.share, season_loosenings[tried.loosening], {}},
                  .peaks = {}};
  // One species after another, each foretold by those before it: that is evidence for all together.
  for (const auto& [species, animals] : moults) {
    likelihoods[species] = log_likelihoods(animals, bell, tried);
    const PeakBelief posterior =
        peaks_given(likelihoods[species], peaks_of_others(seasons.peaks, species));
    seasons.log_evidence += posterior.log_evidence;
    seasons.peaks[species] = posterior.peaks;
  }
  for (int turn = 0; turn < turns; ++turn)
    for (const auto& [species, likelihood] : likelihoods)
      seasons.peaks[species] =
          peaks_given(likelihood, peaks_of_others(seasons.peaks, species)).peaks;
  seasons.shared.peaks = peaks_of_others(seasons.peaks, {});
  return seasons;
}

// All that is tried at these sharpnesses: the best of it, with the evidence of the mean, which
// does not grow with how much was tried.
Seasons fit_all(const BySpecies& moults, std::span<const double> tried) {
  Seasons best;
  double best_evidence = -HUGE_VAL;
  double sum = -HUGE_VAL;
  double count = 0;
  for (const double sharpness : tried)
    for (std::size_t loosening = 0; loosening < season_loosenings.size(); ++loosening)
      for (const double share : shares) {
        Seasons seasons = fit(moults, {sharpness, share, loosening});
        sum = log_sum(sum, seasons.log_evidence);
        ++count;
        if (seasons.log_evidence <= best_evidence) continue;
        best_evidence = seasons.log_evidence;
        best = std::move(seasons);
      }
  best.log_evidence = sum - std::log(count);
  return best;
}

}  // namespace

void learn_seasons(CollectionModel& model, const FitSample& sample) {
  constexpr double negligible = 0.02;
  BySpecies moults;
  for (std::size_t i = 0; i < sample.animals.size(); ++i) {
    const Evidence& animal = *sample.animals[i];
    CycleHistory history = finished_cycles(animal, model.clock_of(animal));
    add_traces(history, sample.traces[i]);
    std::vector<GrownMoult> grown = grown_moults(model, animal, history);
    if (!grown.empty()) moults[animal.species].push_back(std::move(grown));
  }
  model.season = {};
  model.species_peaks.clear();
  if (moults.empty()) return;
  // That cycles are near a year is no season yet.
  const double none = fit_all(moults, std::array{0.0}).log_evidence;
  Seasons seasons = fit_all(moults, sharpnesses);
  const double odds = documented_priors().season.odds * std::exp(seasons.log_evidence - none);
  seasons.shared.kept *= odds / (1 + odds);
  if (seasons.shared.kept < negligible) return;
  model.season = seasons.shared;
  model.species_peaks = std::move(seasons.peaks);
}

Season season_of(const CollectionModel& model, const Evidence& evidence,
                 const CycleHistory& history, const LevelFilter& now) {
  Season season = model.season;
  if (!is_grown(evidence.stage, now)) season.kept = 0;
  if (season.kept == 0) return season;
  if (const auto own = model.species_peaks.find(evidence.species); own != model.species_peaks.end())
    season.peaks = own->second;
  const auto loosened = std::ranges::find(season_loosenings, season.loosened);
  const Explained logs = explain(grown_moults(model, evidence, history), YearBell(season.sharpness),
                                 static_cast<std::size_t>(loosened - season_loosenings.begin()));
  const double does_not = std::log(1 - season.kept) + logs.by_lengths;
  const double keeps = std::log(season.kept) + peaks_given(logs.by_peak, season.peaks).log_evidence;
  season.kept = std::exp(keeps - log_sum(keeps, does_not));
  return season;
}

}  // namespace rackside

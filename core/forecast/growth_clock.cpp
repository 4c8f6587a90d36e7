#include "core/forecast/growth_clock.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/climate/degree_days.hpp"

namespace rackside {
namespace {

constexpr std::size_t weeks_a_year = 52;
constexpr std::size_t weeks_ahead = 2 * weeks_a_year;

constexpr double radians_a_day = 2 * std::numbers::pi / 365.25;

double rate_at(double celsius, double threshold, const WarmthPriors& priors) {
  const auto degree_days = [&](double mean) {
    return degree_days_by_sine(
        {mean - priors.daily_swing, mean + priors.daily_swing, threshold, priors.upper});
  };
  // However cold it is read to be, the animal is alive: growth does not stop for the model.
  return std::max(0.1, degree_days(celsius) / degree_days(priors.reference));
}

}  // namespace

GrowthClock::GrowthClock(const YearlyWave& wave) : wave_(wave) {
  const double height = std::hypot(wave.cosine, wave.sine);
  if (height > 0.9) wave_ = {wave.cosine * 0.9 / height, wave.sine * 0.9 / height};
}

GrowthClock::GrowthClock(std::span<const WeekOfWarmth> weeks, double threshold,
                         const WarmthPriors& priors) {
  if (weeks.empty()) return;
  first_ = weeks.front().day;
  const auto count = static_cast<std::size_t>(std::lround((weeks.back().day - first_) / 7)) + 1;
  std::vector<double> rates(count, -1);
  double sum = 0;
  for (const WeekOfWarmth& week : weeks) {
    const double rate = rate_at(week.celsius, threshold, priors);
    rates[static_cast<std::size_t>(std::lround((week.day - first_) / 7))] = rate;
    sum += rate;
  }
  rate_ = sum / static_cast<double>(weeks.size());
  for (std::size_t week = 0; week < count + weeks_ahead; ++week) {
    if (week >= count) rates.push_back(week >= weeks_a_year ? rates[week - weeks_a_year] : rate_);
    if (rates[week] < 0) rates[week] = week >= weeks_a_year ? rates[week - weeks_a_year] : rate_;
  }
  total_.reserve(rates.size() + 1);
  total_.push_back(0);
  for (const double rate : rates) total_.push_back(total_.back() + 7 * rate);
}

double GrowthClock::rate_of_wave(double day) const {
  return 1 + wave_.cosine * std::cos(radians_a_day * day) +
         wave_.sine * std::sin(radians_a_day * day);
}

double GrowthClock::at(double day) const {
  if (total_.empty()) {
    if (wave_ == YearlyWave{}) return day;
    return day + (wave_.cosine * std::sin(radians_a_day * day) -
                  wave_.sine * std::cos(radians_a_day * day)) /
                     radians_a_day;
  }
  const double weeks = (day - first_) / 7;
  const double last = static_cast<double>(total_.size() - 1);
  if (weeks <= 0) return weeks * 7 * rate_;
  if (weeks >= last) return total_.back() + (weeks - last) * 7 * rate_;
  const auto knot = static_cast<std::size_t>(weeks);
  return std::lerp(total_[knot], total_[knot + 1], weeks - static_cast<double>(knot));
}

double GrowthClock::after(double from, double elapsed) const {
  const double goal = at(from) + elapsed;
  if (total_.empty()) {
    double day = from + elapsed;
    if (wave_ == YearlyWave{}) return day;
    // Newton's steps: the clock is smooth and its rate is bounded away from 0.
    for (int step = 0; step < 12; ++step) {
      const double off = at(day) - goal;
      if (std::abs(off) < 1e-3) break;
      day -= off / std::max(0.25, rate_of_wave(day));
    }
    return day;
  }
  if (goal <= 0) return first_ + goal / rate_;
  if (goal >= total_.back())
    return first_ + 7 * static_cast<double>(total_.size() - 1) + (goal - total_.back()) / rate_;
  const auto above = std::ranges::upper_bound(total_, goal);
  const auto knot = static_cast<std::size_t>(above - total_.begin()) - 1;
  return first_ + 7 * (static_cast<double>(knot) +
                       (goal - total_[knot]) / (total_[knot + 1] - total_[knot]));
}

}  // namespace rackside

#include "kiosk/view/weeks_view.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/forecast/quantiles.hpp"
#include "core/words/calendar_names.hpp"
#include "core/words/sentences.hpp"

namespace rackside::kiosk {
namespace {

using std::chrono::days;

constexpr double week = 7;
// Eight sums of ten lie within this many standard deviations of what is expected, as many
// independent moults add up nearly normally (10th and 90th percentile of the normal distribution).
constexpr double eight_of_ten = 1.2816;

Day monday_of(Day today) {
  const auto since = std::chrono::weekday{today} - std::chrono::Monday;
  return today - since;
}

// What is now, in days after midnight of that Monday on the wall.
double now_in_strip(const Moment& now) {
  return days_between(Instant{monday_of(now.day())}, now.local());
}

// From days after the forecast was made to days of the strip.
double shift_of(const Forecast& forecast, const Moment& now) {
  return now_in_strip(now) - days_between(forecast.as_of, now.utc);
}

bool may_have_moulted(const Model& model, const AnimalState& animal, const Forecast& forecast) {
  return forecast.p_moulted_unseen >= model.rules.rules_for(animal).unseen_moult_above;
}

struct Candidate {
  AnimalId animal;
  double p_unseen = 0;  // 0 where it is not worth a look
  double median = 0;
};

std::vector<WeekColumn> columns(const Moment& now, DateStyle style) {
  std::vector<WeekColumn> list;
  const auto& names = calendar_names(style).brief_months;
  for (std::size_t i = 0; i < weeks_shown; ++i) {
    const std::chrono::year_month_day date{monday_of(now.day()) + days{7 * static_cast<int>(i)}};
    WeekColumn column{.day = std::to_string(static_cast<unsigned>(date.day()))};
    if (i == 0 || static_cast<unsigned>(date.day()) <= 7)
      column.month = names[static_cast<unsigned>(date.month()) - 1];
    list.push_back(std::move(column));
  }
  return list;
}

// Adds this animal's chances to the weeks; returns the variance that the sum gains by it.
double add_chances(std::vector<WeekColumn>& weeks, const Forecast& forecast, const Moment& now) {
  const double shift = shift_of(forecast, now);
  double before = probability_by(forecast, now_in_strip(now) - shift);
  const double begin = before;
  for (std::size_t i = 0; i < weeks.size(); ++i) {
    const double by = probability_by(forecast, week * static_cast<double>(i + 1) - shift);
    weeks[i].expected += by - before;
    before = by;
  }
  return (before - begin) * (1 - (before - begin));
}

std::string expected_words(double expected) {
  if (expected < 0.05) return "–";
  return expected < 9.95 ? fmt::format("{:.1f}", expected) : fmt::format("{:.0f}", expected);
}

std::string summary_words(const std::vector<WeekColumn>& weeks, double variance) {
  double expected = 0;
  for (const WeekColumn& column : weeks) expected += column.expected;
  const double spread = eight_of_ten * std::sqrt(variance);
  return fmt::format("about {:.0f} moults, likely {:.0f} to {:.0f}", expected,
                     std::max(0.0, expected - spread), expected + spread);
}

std::string short_place(const Place& place) {
  std::string text = place.rack + place.shelf;
  if (!place.position.empty()) text += (text.empty() ? "" : "-") + place.position;
  return text;
}

}  // namespace

WeeksView view_weeks(const Model& model) {
  WeeksView view{.weeks = columns(model.now, model.rules.collection.wording.dates),
                 .today = now_in_strip(model.now)};
  std::vector<Candidate> list;
  double variance = 0;
  for (const auto& [id, forecast] : model.forecasts) {
    const AnimalState* animal = model.collection.animal(id);
    if (animal == nullptr || animal->life != Life::Living || !forecast.moult_expected) continue;
    variance += add_chances(view.weeks, forecast, model.now);
    const bool unseen = may_have_moulted(model, *animal, forecast);
    const double shift = shift_of(forecast, model.now);
    if (!unseen && quantile(forecast, 0.05) + shift > week * weeks_shown) continue;
    if (unseen) ++view.unseen;
    list.push_back({id, unseen ? forecast.p_moulted_unseen : 0, quantile(forecast, 0.5) + shift});
  }
  std::ranges::sort(list, [](const Candidate& a, const Candidate& b) {
    if (a.p_unseen != b.p_unseen) return a.p_unseen > b.p_unseen;
    if (a.median != b.median) return a.median < b.median;
    return a.animal < b.animal;
  });
  for (const Candidate& candidate : list) view.animals.push_back(candidate.animal);
  for (WeekColumn& column : view.weeks) column.expected_words = expected_words(column.expected);
  view.summary = summary_words(view.weeks, variance);
  return view;
}

WeekRow view_week_row(const Model& model, const AnimalId& id) {
  const AnimalState& animal = *model.collection.animal(id);
  const Forecast& forecast = model.forecasts.at(id);
  const double shift = shift_of(forecast, model.now);
  WeekRow row{.tub = animal.enclosure,
              .place = {},
              .species = display_name(animal),
              .q05 = quantile(forecast, 0.05) + shift,
              .q25 = quantile(forecast, 0.25) + shift,
              .median = quantile(forecast, 0.5) + shift,
              .q75 = quantile(forecast, 0.75) + shift,
              .q95 = quantile(forecast, 0.95) + shift,
              .unseen = {}};
  if (animal.enclosure)
    if (const auto* tub = model.collection.enclosure(*animal.enclosure))
      row.place = short_place(tub->place);
  if (may_have_moulted(model, animal, forecast))
    row.unseen = fmt::format("unseen: {}", in_ten(forecast.p_moulted_unseen));
  return row;
}

}  // namespace rackside::kiosk

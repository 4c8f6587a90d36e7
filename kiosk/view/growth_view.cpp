#include "kiosk/view/growth_view.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "core/event/words.hpp"
#include "core/words/dates.hpp"

namespace rackside::kiosk {
namespace {

const std::optional<Millimetres>& measure_of(const GrowthStep& step, Measure what) {
  return what == Measure::LegSpan ? step.leg_span : step.carapace;
}

GrowthCurve curve_of(Measure what, const std::vector<GrowthStep>& steps) {
  GrowthCurve curve{.word = std::string(word_of(what))};
  for (std::size_t i = 0; i < steps.size(); ++i)
    if (const auto& length = measure_of(steps[i], what))
      curve.dots.push_back({i, length->value, true});
  for (const GrowthBetween& growth : growth_in(what, steps))
    for (auto& dot : curve.dots)
      if (dot.step == growth.to && !growth.plausible) dot.plausible = false;
  const auto summary = summarise_growth(what, steps);
  if (summary) curve.next = summary->next.value;
  return curve;
}

std::vector<std::string> sentences_of(Measure what, const std::vector<GrowthStep>& steps,
                                      Units units) {
  std::vector<std::string> list;
  const auto summary = summarise_growth(what, steps);
  if (!summary) return list;
  list.push_back(summary->sentence);
  list.push_back(fmt::format("If it goes on like this, its {} is about {} after the next moult.",
                             word_of(what), about_length_words(summary->next, units)));
  return list;
}

GrowthRow row_of(const GrowthStep& step, const Model& model) {
  const Wording& wording = model.rules.collection.wording;
  const auto words = [&](const std::optional<Millimetres>& length) {
    return length ? length_words(*length, wording.units) : std::string();
  };
  return {
      step.moult ? day_words(step.moult->moment.day(), model.now.day(), wording.dates) : "before",
      step.instar ? std::to_string(*step.instar) : "", words(step.leg_span), words(step.carapace)};
}

}  // namespace

GrowthView view_growth(const Model& model) {
  GrowthView view;
  const auto animal = shown_animal(model);
  if (!animal || !model.tub->history) return view;
  view.title = display_name(*animal);
  view.can_measure = animal->life == Life::Living;
  view.leg_span = {NumberOf::LegSpan, animal->id, model.tub->code, {}};
  view.carapace = {NumberOf::Carapace, animal->id, model.tub->code, {}};
  const auto steps = growth_of(*model.tub->history);
  view.steps = steps.size();
  for (const GrowthStep& step : steps) view.rows.push_back(row_of(step, model));
  std::ranges::reverse(view.rows);
  for (const Measure what : {Measure::LegSpan, Measure::Carapace}) {
    GrowthCurve curve = curve_of(what, steps);
    if (!curve.dots.empty()) view.curves.push_back(std::move(curve));
    for (std::string& words : sentences_of(what, steps, model.rules.collection.wording.units))
      view.sentences.push_back(std::move(words));
  }
  return view;
}

}  // namespace rackside::kiosk

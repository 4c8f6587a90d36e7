#include <fmt/format.h>

#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

void reckon(RoundPage& page) {
  page.progress = progress(page.so_far.plan, page.so_far.since, page.so_far.round.started);
}

void began(Model& model, const Event& event) {
  refresh_plan(model);
  model.summary.reset();
  model.round = RoundPage{{Round{.id = event.id,
                                 .kiosk = event.kiosk,
                                 .started = event.when,
                                 .written = event.written,
                                 .rack = std::get<RoundStarted>(event.details).rack,
                                 .ended = {}},
                           model.plan,
                           {}},
                          {}};
  reckon(*model.round);
  go_home(model);
}

void ended(Model& model) {
  const RoundSoFar& walk = model.round->so_far;
  model.plan_stale = true;
  refresh_plan(model);
  model.summary = summarise(walk.plan, model.plan, walk.since, walk.round.started);
  model.round.reset();
  model.rules.collection.instead.clear();
  model.screen = ScreenName::Summary;
  model.list_page = 0;
}

}  // namespace

Effects set_out(Model& model, const Stamp& stamp) {
  if (model.round || !model.overview_known) return {};
  return {SaveDrafts{{draft_now(model.by, stamp, RoundStarted{})}}};
}

Effects end_round(Model& model, const Stamp& stamp) {
  if (!model.round) return {};
  return {SaveDrafts{{draft_now(model.by, stamp, RoundEnded{model.round->so_far.round.id})}}};
}

void refresh_plan(Model& model) {
  if (!model.overview_known) return;
  const bool new_day = model.plan.made.day() != model.now.day();
  if (!model.plan_stale && !new_day) return;
  // What was short yesterday may be here today.
  if (new_day) model.rules.collection.instead.clear();
  model.plan = plan_day(model.collection, model.forecasts, model.rules, model.climate, model.now);
  model.plan_stale = false;
}

void take_settings(Model& model, Settings settings) {
  model.settings = std::move(settings);
  model.rules.collection.wording = model.settings.wording;
  model.plan_stale = true;
}

void note_for_round(Model& model, const Event& event) {
  if (std::holds_alternative<RoundStarted>(event.details)) {
    began(model, event);
  } else if (!model.round) {
    return;
  } else if (std::holds_alternative<RoundEnded>(event.details)) {
    ended(model);
  } else {
    model.round->so_far.since.push_back(event);
    reckon(*model.round);
  }
}

void take_round(Model& model, std::optional<RoundSoFar> round) {
  // A round that began here after the reading did is known better here.
  if (model.round || !round) return;
  model.round = RoundPage{std::move(*round), {}};
  reckon(*model.round);
}

}  // namespace rackside::kiosk

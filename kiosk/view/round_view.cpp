#include "kiosk/view/round_view.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "core/collection/place.hpp"
#include "core/round/preparation.hpp"
#include "core/words/dates.hpp"
#include "core/words/sentences.hpp"

namespace rackside::kiosk {
namespace {

RoundLine line_of(const TubTask& tub, const Model& model) {
  RoundLine line{.kind = RoundLine::Kind::Tub,
                 .position = tub.place.position,
                 .detail = tub.instruction.sentence,
                 .code = tub.enclosure,
                 .urgent = tub.instruction.urgent};
  const AnimalState* animal = model.collection.animal(tub.animal);
  if (animal == nullptr) return line;
  line.title = display_name(*animal);
  const auto found = model.forecasts.find(tub.animal);
  if (found != model.forecasts.end()) line.strip = small_strip(*animal, &found->second, model.now);
  return line;
}

RoundLine shelf_line(const Place& shelf, const std::string& detail) {
  const std::string place = format_place(shelf);
  return {.kind = RoundLine::Kind::Shelf,
          .title = place.empty() ? "no place given" : place,
          .detail = detail};
}

void add_due(RoundView& view, const DayPlan& plan, const Model& model,
             const std::set<AnimalId>& done) {
  bool found_next = false;
  for (const ShelfPart& part : by_shelf(plan.due)) {
    view.lines.push_back(shelf_line(part.shelf, fmt::format("{} due", part.tubs.size())));
    for (const TubTask& tub : part.tubs) {
      RoundLine line = line_of(tub, model);
      line.done = done.contains(tub.animal);
      if (!line.done && !found_next) {
        found_next = true;
        view.next = view.lines.size();
      }
      view.lines.push_back(std::move(line));
    }
  }
}

void add_quiet(RoundView& view, const std::vector<TubTask>& tubs, const std::string& title,
               const Model& model) {
  if (tubs.empty()) return;
  view.lines.push_back({.kind = RoundLine::Kind::Shelf,
                        .title = title,
                        .detail = count_of(static_cast<int>(tubs.size()), "tub")});
  for (const TubTask& tub : tubs) {
    RoundLine line = line_of(tub, model);
    line.quiet = true;
    line.position = fmt::format("{}{}-{}", tub.place.rack, tub.place.shelf, tub.place.position);
    view.lines.push_back(std::move(line));
  }
}

std::string progress_words(const Progress& progress) {
  std::string words = fmt::format("{} of {} done", progress.done, progress.due());
  if (progress.remaining && progress.done < progress.due())
    words += fmt::format(", about {} left",
                         count_of(static_cast<int>(progress.remaining->count()) + 1, "minute"));
  return words;
}

}  // namespace

RoundView view_round(const Model& model) {
  RoundView view{.title = long_day_words(model.now.day(), model.settings.wording.dates)};
  if (!model.overview_known) {
    view.detail =
        model.roster_known ? "looking through the records ..." : "reading the collection ...";
    return view;
  }
  view.under_way = model.round.has_value();
  const DayPlan& plan = view.under_way ? model.round->so_far.plan : model.plan;
  std::set<AnimalId> done;
  if (view.under_way) {
    for (const TubProgress& tub : model.round->progress.tubs)
      if (tub.done) done.insert(tub.animal);
    view.detail = progress_words(model.round->progress);
  } else {
    view.detail = fmt::format("{} due, {} wait, {} left alone", plan.due.size(), plan.wait.size(),
                              plan.leave_alone.size());
    view.can_set_out = !plan.due.empty();
  }
  for (const RackNote& note : plan.notes) view.notes.push_back(note.sentence);
  add_due(view, plan, model, done);
  add_quiet(view, plan.leave_alone, "leave alone", model);
  add_quiet(view, plan.wait, "wait", model);
  return view;
}

CarryView view_carry(const Model& model) {
  const Preparation ready = prepare(model.plan, model.collection, model.rules.collection.margin);
  CarryView view{.prey = {}, .carry = ready.carry, .cautions = ready.cautions};
  for (const PreyNeeded& prey : ready.prey)
    view.prey.push_back(
        {format_prey_needed(prey, model.settings.wording.units), {prey.kind, prey.size}});
  return view;
}

SummaryView view_summary(const Model& model) {
  SummaryView view;
  if (!model.summary) return view;
  const Summary& summary = *model.summary;
  view.words = fmt::format("{} of {} done. {} took, {} refused, {} left their prey.", summary.done,
                           summary.due, summary.fed, summary.refused, summary.prey_left);
  for (const SummaryLine& line : summary.look_again) {
    RoundLine row = line_of(line.tub, model);
    row.detail = fmt::format("{}: {}", look_again_word(line.reason), row.detail);
    row.position =
        fmt::format("{}{}-{}", line.tub.place.rack, line.tub.place.shelf, line.tub.place.position);
    view.lines.push_back(std::move(row));
  }
  return view;
}

}  // namespace rackside::kiosk

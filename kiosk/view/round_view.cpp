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

// A line before it is put into words.
struct Entry {
  const TubTask* tub = nullptr;  // none: the head over those that follow
  std::string title, detail;     // of a head
  bool quiet = false;
};

Entry shelf_head(const ShelfPart& part) {
  const std::string place = format_place(part.shelf);
  return {.title = place.empty() ? "no place given" : place,
          .detail = fmt::format("{} due", part.tubs.size())};
}

void add_quiet(std::vector<Entry>& entries, const std::vector<TubTask>& tubs,
               const std::string& title) {
  if (tubs.empty()) return;
  entries.push_back({.title = title, .detail = count_of(static_cast<int>(tubs.size()), "tub")});
  for (const TubTask& tub : tubs) entries.push_back({.tub = &tub, .quiet = true});
}

std::vector<Entry> entries_of(const DayPlan& plan) {
  std::vector<Entry> entries;
  for (const ShelfPart& part : by_shelf(plan.due)) {
    entries.push_back(shelf_head(part));
    for (const TubTask& tub : part.tubs) entries.push_back({.tub = &tub});
  }
  add_quiet(entries, plan.leave_alone, "leave alone");
  add_quiet(entries, plan.wait, "wait");
  return entries;
}

const DayPlan& plan_shown(const Model& model) {
  return model.round ? model.round->so_far.plan : model.plan;
}

std::set<AnimalId> done_so_far(const Model& model) {
  std::set<AnimalId> done;
  if (!model.round) return done;
  for (const TubProgress& tub : model.round->progress.tubs)
    if (tub.done) done.insert(tub.animal);
  return done;
}

RoundLine told(const Entry& entry, const Model& model, const std::set<AnimalId>& done) {
  if (entry.tub == nullptr)
    return {.kind = RoundLine::Kind::Shelf, .title = entry.title, .detail = entry.detail};
  const TubTask& tub = *entry.tub;
  RoundLine line = line_of(tub, model);
  line.quiet = entry.quiet;
  line.done = !entry.quiet && done.contains(tub.animal);
  if (entry.quiet)
    line.position = fmt::format("{}{}-{}", tub.place.rack, tub.place.shelf, tub.place.position);
  return line;
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
  const DayPlan& plan = plan_shown(model);
  if (view.under_way) {
    view.detail = progress_words(model.round->progress);
  } else {
    view.detail = fmt::format("{} due, {} wait, {} left alone", plan.due.size(), plan.wait.size(),
                              plan.leave_alone.size());
    view.can_set_out = !plan.due.empty();
  }
  for (const RackNote& note : plan.notes) view.notes.push_back(note.sentence);
  const auto entries = entries_of(plan);
  const auto done = done_so_far(model);
  const auto next = std::ranges::find_if(entries, [&](const Entry& entry) {
    return entry.tub != nullptr && !entry.quiet && !done.contains(entry.tub->animal);
  });
  view.lines = entries.size();
  if (next != entries.end()) view.next = static_cast<std::size_t>(next - entries.begin());
  return view;
}

std::vector<RoundLine> round_lines(const Model& model, std::size_t first, std::size_t most) {
  std::vector<RoundLine> lines;
  if (!model.overview_known) return lines;
  const auto entries = entries_of(plan_shown(model));
  const auto done = done_so_far(model);
  for (std::size_t i = first; i < std::min(entries.size(), first + most); ++i)
    lines.push_back(told(entries[i], model, done));
  return lines;
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

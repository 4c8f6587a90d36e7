// The cover that is shown: what it will need, its sheet, its end, the report on it.

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "core/cover/cover_access.hpp"
#include "core/cover/cover_rules.hpp"
#include "core/words/dates.hpp"
#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

DateStyle dates_of(const Model& model) { return model.settings.wording.dates; }

// The one after `shown`, the first after the last; the first where `shown` is not among them.
std::optional<EventId> next_of(const std::vector<const Cover*>& covers,
                               const std::optional<EventId>& shown) {
  if (covers.empty()) return std::nullopt;
  const auto found =
      std::ranges::find_if(covers, [&](const Cover* cover) { return cover->id == shown; });
  if (found == covers.end() || found + 1 == covers.end()) return covers.front()->id;
  return (*(found + 1))->id;
}

bool among(const std::vector<const Cover*>& covers, const std::optional<EventId>& shown) {
  return std::ranges::any_of(covers, [&](const Cover* cover) { return cover->id == shown; });
}

Effects show_cover(Model& model, std::optional<EventId> cover) {
  const bool printing = model.cover_page.printing;
  model.cover_page = CoverPage{.shown = cover, .printing = printing};
  if (!cover) return {};
  model.cover_page.reading = true;
  return {ForeseeCover{*cover, model.settings.wording}};
}

Effects show_return(Model& model, std::optional<EventId> cover) {
  const bool printing = model.return_page.printing;
  model.return_page = ReturnPage{.shown = cover, .printing = printing};
  if (!cover) return {};
  model.return_page.reading = true;
  return {TellReturn{*cover, model.settings.wording}};
}

// What was changed of what they are to know.
std::string words_for_stand_in(const Details& details) {
  if (const auto* contact = std::get_if<ContactSet>(&details))
    return contact->number.empty()
               ? fmt::format("Saved: {} is no longer to be called.", contact->name)
               : fmt::format("Saved: they can call {}, {}.", contact->name, contact->number);
  if (std::holds_alternative<CoverNote>(details))
    return "Saved. The note stands on every sheet until it is changed.";
  if (std::holds_alternative<Retracted>(details)) return "Saved: there is no such note any more.";
  return {};
}

std::string ended_words(const Model& model, const Cover& cover) {
  if (cover.last_day() < cover.from)
    return fmt::format("Saved: the cover of {} is called off. Their badge opens nothing for it.",
                       cover.who);
  return fmt::format("Saved: {} stands in until today, {}. Tomorrow their badge opens nothing.",
                     cover.who, long_day_words(cover.last_day(), dates_of(model)));
}

}  // namespace

std::vector<const Cover*> covers_ahead(const Model& model) {
  std::vector<const Cover*> covers;
  for (const Cover& cover : model.cover.covers)
    if (cover.from <= cover.last_day() && cover.last_day() >= model.now.day())
      covers.push_back(&cover);
  std::ranges::stable_sort(covers, {}, &Cover::from);
  return covers;
}

std::vector<const Cover*> covers_begun(const Model& model) {
  std::vector<const Cover*> covers;
  for (const Cover& cover : model.cover.covers)
    if (cover.from <= cover.last_day() && cover.from <= model.now.day()) covers.push_back(&cover);
  std::ranges::stable_sort(covers, std::greater{}, &Cover::from);
  return covers;
}

Effects open_cover(Model& model) {
  go_to(model, ScreenName::Cover);
  const auto covers = covers_ahead(model);
  if (among(covers, model.cover_page.shown)) return show_cover(model, model.cover_page.shown);
  return show_cover(model, next_of(covers, std::nullopt));
}

Effects open_return(Model& model) {
  go_to(model, ScreenName::Returned);
  const auto covers = covers_begun(model);
  // What is asked for is mostly the cover one has just looked at.
  if (among(covers, model.cover_page.shown)) return show_return(model, model.cover_page.shown);
  return show_return(model, next_of(covers, std::nullopt));
}

Effects next_cover(Model& model) {
  if (model.screen == ScreenName::Returned)
    return show_return(model, next_of(covers_begun(model), model.return_page.shown));
  return show_cover(model, next_of(covers_ahead(model), model.cover_page.shown));
}

Effects end_cover(Model& model, const Stamp& stamp) {
  const Cover* cover =
      model.cover_page.shown ? model.cover.cover(*model.cover_page.shown) : nullptr;
  if (cover == nullptr || !model.saving.empty()) return {};
  const Day today = stamp.now.day();
  if (const auto can = check_end(*cover, today, dates_of(model)); !can) {
    tell(model, Tone::Problem, can.error().sentence);
    return {};
  }
  if (!std::exchange(model.cover_page.ending, true)) {
    tell(model, Tone::Tell,
         today < cover->from
             ? fmt::format("Touch again to call it off: {} then never stands in.", cover->who)
             : fmt::format("Touch again to end it: today is then {}'s last day.", cover->who));
    return {};
  }
  model.cover_page.ending = false;
  std::vector<Draft> drafts{draft_now(model.by, stamp, CoverEnded{cover->id})};
  if (auto access = access_after(model.people, model.cover, *cover, today)) {
    drafts.push_back(draft_now(model.by, stamp, *std::move(access)));
    drafts.back().id = stamp.next_fresh;
  }
  return {SaveDrafts{std::move(drafts)}};
}

Effects print_cover(Model& model) {
  if (model.screen == ScreenName::Returned) {
    ReturnPage& page = model.return_page;
    if (!page.report || std::exchange(page.printing, true)) return {};
    return {PrintReturn{*page.report, model.settings}};
  }
  CoverPage& page = model.cover_page;
  if (!page.shown || std::exchange(page.printing, true)) return {};
  return {PrintHandover{*page.shown, model.settings}};
}

bool is_about_cover(const Model& model, const Details& details) {
  if (const auto* retracted = std::get_if<Retracted>(&details))
    return std::ranges::find(model.cover.notes, retracted->target, &NoteForCover::id) !=
           model.cover.notes.end();
  return std::holds_alternative<CoverPlanned>(details) ||
         std::holds_alternative<CoverEnded>(details) ||
         std::holds_alternative<CoverNote>(details) || std::holds_alternative<ContactSet>(details);
}

Effects on_cover_event(Model& model, const Event& event) {
  apply(model.people, event);
  apply(model.cover, event);
  if (const auto* retracted = std::get_if<Retracted>(&event.details))
    forget_note(model.cover, retracted->target);
  if (const auto* planned = std::get_if<CoverPlanned>(&event.details)) {
    model.new_cover = {};
    model.cover_page.shown = event.id;
    Effects effects = open_cover(model);
    tell(model, Tone::Done,
         fmt::format("Saved: {} stands in. Print the sheet: their badge is on it.", planned->who));
    return effects;
  }
  if (const auto* ended = std::get_if<CoverEnded>(&event.details)) {
    const Cover* cover = model.cover.cover(ended->cover);
    if (cover == nullptr) return {};
    Effects effects = open_cover(model);
    tell(model, Tone::Done, ended_words(model, *cover));
    return effects;
  }
  if (const auto words = words_for_stand_in(event.details); !words.empty())
    tell(model, Tone::Done, words);
  return {};
}

}  // namespace rackside::kiosk

// What whoever stands in is to know: whom they can call, and the keeper's words for them.

#include <fmt/format.h>

#include <algorithm>
#include <ranges>

#include "kiosk/model/steps.hpp"
#include "kiosk/model/trimmed.hpp"

namespace rackside::kiosk {

const Contact* keeper_to_call(const CoverBook& book) {
  const auto found = std::ranges::find(book.contacts, ContactKind::Keeper, &Contact::kind);
  return found == book.contacts.end() ? nullptr : &*found;
}

const NoteForCover* note_for_all(const CoverBook& book) {
  for (const NoteForCover& note : book.notes | std::views::reverse)
    if (!note.tub && note.rack.empty()) return &note;
  return nullptr;
}

std::set<std::string> keepers_known(const Model& model) {
  std::set<std::string> names;
  for (const auto& [name, person] : model.people.by_name)
    if (person.role == Role::Keeper) names.insert(name);
  return names;
}

std::optional<std::string> why_no_contact(const std::string& name) {
  if (!trimmed(name).empty()) return std::nullopt;
  return "Say first who it is. Nothing was changed.";
}

std::optional<std::string> why_no_number(const Model& model, const std::string& number) {
  const bool digits = std::ranges::any_of(number, [](char c) { return c >= '0' && c <= '9'; });
  const bool none_any_more = trimmed(number).empty() && keeper_to_call(model.cover) != nullptr;
  if (digits || none_any_more) return std::nullopt;
  return "Type the number that they can call. Nothing was changed.";
}

Effects set_contact(const Model& model, const std::string& name, const std::string& number,
                    const Stamp& stamp) {
  const Contact* before = keeper_to_call(model.cover);
  const std::string kept = trimmed(number);
  if (before != nullptr && before->name == name && before->number == kept) return {};
  std::vector<Draft> drafts;
  // The same name again replaces what was there, another one would stand beside it.
  if (before != nullptr && before->name != name)
    drafts.push_back(draft_now(model.by, stamp, ContactSet{ContactKind::Keeper, before->name, {}}));
  if (!kept.empty() || drafts.empty()) {
    drafts.push_back(draft_now(model.by, stamp, ContactSet{ContactKind::Keeper, name, kept}));
    if (before != nullptr) drafts.back().note = before->when;
    if (drafts.size() > 1) drafts.back().id = stamp.next_fresh;
  }
  return {SaveDrafts{std::move(drafts)}};
}

Effects write_note(const Model& model, const std::string& words, const Stamp& stamp) {
  const NoteForCover* before = note_for_all(model.cover);
  const std::string kept = trimmed(words);
  if (kept == (before == nullptr ? "" : before->words)) return {};
  std::vector<Draft> drafts;
  if (before != nullptr) drafts.push_back(draft_now(model.by, stamp, Retracted{before->id}));
  if (!kept.empty()) {
    drafts.push_back(draft_now(model.by, stamp, CoverNote{}));
    drafts.back().note = kept;
    if (drafts.size() > 1) drafts.back().id = stamp.next_fresh;
  }
  return {SaveDrafts{std::move(drafts)}};
}

}  // namespace rackside::kiosk

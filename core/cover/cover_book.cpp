#include "core/cover/cover_book.hpp"

#include <algorithm>

namespace rackside {
namespace {

struct Apply {
  CoverBook& book;
  const Event& event;

  void operator()(const CoverPlanned& e) const {
    book.covers.push_back({event.id, e.who, e.from, e.to, e.racks, std::nullopt});
  }
  void operator()(const CoverEnded& e) const {
    const Day day = event.when.moment.day();
    for (Cover& cover : book.covers)
      if (cover.id == e.cover) cover.ended = std::min(cover.ended.value_or(day), day);
  }
  void operator()(const CoverNote& e) const {
    book.notes.push_back({event.id, event.enclosure, e.rack, event.note});
  }
  void operator()(const ContactSet& e) const {
    const auto is_it = [&](const Contact& c) { return c.kind == e.kind && c.name == e.name; };
    auto found = std::ranges::find_if(book.contacts, is_it);
    if (e.number.empty()) {
      if (found != book.contacts.end()) book.contacts.erase(found);
      return;
    }
    Contact contact{e.kind, e.name, e.number, event.note};
    if (found != book.contacts.end()) {
      *found = std::move(contact);
      return;
    }
    const auto behind = std::ranges::upper_bound(book.contacts, e.kind, {}, &Contact::kind);
    book.contacts.insert(behind, std::move(contact));
  }
  template <class Other>
  void operator()(const Other&) const {}
};

bool is_of(const Cover& cover, std::string_view who) { return who.empty() || cover.who == who; }

}  // namespace

bool Cover::includes(std::string_view rack) const {
  return racks.empty() || std::ranges::find(racks, rack) != racks.end();
}

const Cover* CoverBook::cover(const EventId& id) const {
  const auto found = std::ranges::find(covers, id, &Cover::id);
  return found == covers.end() ? nullptr : &*found;
}

const Cover* CoverBook::on_or_after(Day day, std::string_view who) const {
  const Cover* best = nullptr;
  for (const Cover& cover : covers)
    if (is_of(cover, who) && cover.from <= cover.last_day() && cover.last_day() >= day)
      if (best == nullptr || cover.from < best->from) best = &cover;
  return best;
}

const Cover* CoverBook::last_begun(Day day, std::string_view who) const {
  const Cover* best = nullptr;
  for (const Cover& cover : covers)
    if (is_of(cover, who) && cover.from <= cover.last_day() && cover.from <= day)
      if (best == nullptr || cover.from >= best->from) best = &cover;
  return best;
}

void apply(CoverBook& book, const Event& event) { std::visit(Apply{book, event}, event.details); }

void forget_note(CoverBook& book, const EventId& note) {
  std::erase_if(book.notes, [&](const NoteForCover& one) { return one.id == note; });
}

CoverBook fold_cover(std::vector<Event> events) {
  CoverBook book;
  for (const Event& event : standing(std::move(events))) apply(book, event);
  return book;
}

const std::vector<std::string_view>& cover_kinds() {
  static const std::vector<std::string_view> kinds{kind_name(CoverPlanned{}),
                                                   kind_name(CoverEnded{}), kind_name(CoverNote{}),
                                                   kind_name(ContactSet{}), kind_name(Retracted{})};
  return kinds;
}

std::string_view usual_reason_to_call(ContactKind kind) {
  switch (kind) {
    case ContactKind::Keeper: return "Whenever you are not sure.";
    case ContactKind::Vet:
      return "An animal looks ill or is hurt, and the keeper cannot be reached.";
    case ContactKind::Emergency:
      return "A bite, hairs in an eye, trouble breathing, swelling or faintness: at once.";
  }
  return {};
}

}  // namespace rackside

#include "core/cover/cover_access.hpp"

#include <algorithm>

namespace rackside {
namespace {

bool needed_for_another(const CoverBook& book, const Cover& ended, Day today) {
  return std::ranges::any_of(book.covers, [&](const Cover& cover) {
    return cover.id != ended.id && cover.who == ended.who && cover.from <= cover.last_day() &&
           cover.last_day() >= today;
  });
}

}  // namespace

Result<std::optional<PersonAdded>> access_for(const People& people, const CoverPlanned& planned,
                                              Day today) {
  if (!people.has_keeper(today)) return std::nullopt;
  const Person* person = people.named(planned.who);
  if (person == nullptr) {
    auto name = new_name(people, planned.who);
    if (!name) return tl::unexpected(name.error());
    return PersonAdded{planned.who, Role::Assistant, planned.to};
  }
  const bool open = badge_state(*person, planned.to) == BadgeState::Open;
  if (person->role == Role::Keeper || open) return std::nullopt;
  return PersonAdded{person->name, person->role, planned.to};
}

std::optional<Details> access_after(const People& people, const CoverBook& book, const Cover& cover,
                                    Day today) {
  const Person* person = people.named(cover.who);
  if (person == nullptr || person->role == Role::Keeper || person->ended) return std::nullopt;
  if (person->until != cover.to || needed_for_another(book, cover, today)) return std::nullopt;
  if (today < cover.from) return PersonEnded{person->name};
  return PersonAdded{person->name, person->role, today};
}

}  // namespace rackside

#include "core/people/people.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>

#include "core/code/code_of_name.hpp"

namespace rackside {
namespace {

constexpr std::size_t longest_name = 40;

bool is_control(char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; }

std::string tidied(std::string_view typed) {
  std::string name;
  for (const char c : typed)
    if (c != ' ' || (!name.empty() && name.back() != ' ')) name += c;
  while (!name.empty() && name.back() == ' ') name.pop_back();
  return name;
}

std::string lower(std::string_view text) {
  std::string result(text);
  for (char& c : result) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return result;
}

}  // namespace

Access access_on(const Person& person, Day today) {
  if (person.ended) return Access::Ended;
  return person.until && *person.until < today ? Access::PastLastDay : Access::Open;
}

const Person* People::named(std::string_view name) const {
  const auto found = by_name.find(name);
  return found == by_name.end() ? nullptr : &found->second;
}

const Person* People::with_badge(const Code& badge) const {
  const auto found = std::ranges::find_if(
      by_name, [&](const auto& entry) { return badge_of(entry.first) == badge; });
  return found == by_name.end() ? nullptr : &found->second;
}

std::vector<const Person*> People::welcome_on(Day today) const {
  std::vector<const Person*> list;
  for (const auto& [name, person] : by_name)
    if (access_on(person, today) == Access::Open) list.push_back(&person);
  std::ranges::stable_partition(list, [](auto* person) { return person->role == Role::Keeper; });
  return list;
}

bool People::has_keeper(Day today) const {
  return std::ranges::any_of(welcome_on(today),
                             [](auto* person) { return person->role == Role::Keeper; });
}

Code badge_of(std::string_view name) { return code_of_name(CodeKind::Person, name); }

void apply(People& people, const Event& event) {
  if (const auto* added = std::get_if<PersonAdded>(&event.details)) {
    if (added->name.empty()) return;
    people.by_name.insert_or_assign(
        added->name, Person{added->name, added->role, added->until, event.when, std::nullopt});
  } else if (const auto* ended = std::get_if<PersonEnded>(&event.details)) {
    const auto found = people.by_name.find(ended->name);
    if (found != people.by_name.end()) found->second.ended = event.when;
  }
}

People fold_people(std::vector<Event> events) {
  People people;
  for (const Event& event : standing(std::move(events))) apply(people, event);
  return people;
}

Result<std::string> new_name(const People& people, std::string_view typed) {
  std::string name = tidied(typed);
  if (name.empty())
    return failure(ErrorKind::BadInput, "A name is needed: it stands beside every entry.");
  if (name.size() > longest_name || std::ranges::any_of(name, is_control))
    return failure(ErrorKind::BadInput,
                   fmt::format("A name has at most {} letters, all on one line.", longest_name));
  for (const auto& [known, person] : people.by_name)
    if (lower(known) == lower(name))
      return failure(
          ErrorKind::NotNow,
          fmt::format("There is a {} here already. Take a name that tells the two apart.", known));
  return name;
}

Result<Person> person_with_badge(const People& people, const Code& badge, Day today) {
  const Person* person = people.with_badge(badge);
  if (person == nullptr)
    return failure(ErrorKind::NotFound,
                   fmt::format("The badge {} belongs to nobody here. A keeper can add the person.",
                               badge.grouped()));
  switch (access_on(*person, today)) {
    case Access::Open: return *person;
    case Access::Ended:
      return failure(ErrorKind::NotAllowed,
                     fmt::format("{}'s access was ended on {}. A keeper can open it again.",
                                 person->name, format_day(person->ended->moment.day())));
    case Access::PastLastDay:
      return failure(ErrorKind::NotAllowed,
                     fmt::format("{}'s last day here was {}. A keeper can open it again.",
                                 person->name, format_day(*person->until)));
  }
  return *person;
}

}  // namespace rackside

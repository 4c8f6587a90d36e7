#pragma once
// Who works at the kiosk: keepers and assistants, as their events leave them.

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/event/event.hpp"

namespace rackside {

struct Person {
  std::string name;  // as it stands in Draft::by
  Role role = Role::Assistant;
  std::optional<Day> until;  // the last day of their access
  When added;
  std::optional<When> ended;

  bool operator==(const Person&) const = default;
};

/// Whether somebody's badge opens the kiosk, and if not, why not.
enum class Access { Open, Ended, PastLastDay };

[[nodiscard]] Access access_on(const Person& person, Day today);

struct People {
  std::map<std::string, Person, std::less<>> by_name;

  [[nodiscard]] const Person* named(std::string_view name) const;
  /// The person whose badge this is, whether it still opens anything or not.
  [[nodiscard]] const Person* with_badge(const Code& badge) const;
  /// Those with access on `today`: keepers first, then by name.
  [[nodiscard]] std::vector<const Person*> welcome_on(Day today) const;
  /// Nobody is known yet: the log of somebody who works alone, or a first start.
  [[nodiscard]] bool nobody() const { return by_name.empty(); }
  [[nodiscard]] bool has_keeper(Day today) const;

  bool operator==(const People&) const = default;
};

/// What a badge of `name` carries.
[[nodiscard]] Code badge_of(std::string_view name);

/// Brings `people` up to date with a standing event that happened last.
void apply(People& people, const Event& event);

/// Events in any order, retractions among them; those that are about nobody change nothing.
[[nodiscard]] People fold_people(std::vector<Event> events);

/// A name as it is kept: blanks at the ends and doubled ones taken out. Errors: BadInput when
/// nothing is left, when it is longer than 40 bytes or holds control characters; NotNow when
/// somebody who is known already has it or one that differs in upper and lower case only.
[[nodiscard]] Result<std::string> new_name(const People& people, std::string_view typed);

/// Why this badge does not open the kiosk on `today`, as a sentence; or the person it opens it for.
/// Errors: NotFound for a badge of nobody here, NotAllowed for one whose time is over.
[[nodiscard]] Result<Person> person_with_badge(const People& people, const Code& badge, Day today);

}  // namespace rackside

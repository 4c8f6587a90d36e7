#pragma once
// What a cover does to the badge of whoever stands in: it opens the kiosk for the days of the cover
// and no longer. Pure.

#include <optional>

#include "core/cover/cover_book.hpp"
#include "core/people/people.hpp"

namespace rackside {

/// The access that goes with a cover that is being planned. None where their badge opens the kiosk
/// for all those days already, and where there is no keeper: then everything is open to everybody.
/// Errors: as new_name, for somebody who is not known yet.
[[nodiscard]] Result<std::optional<PersonAdded>> access_for(const People& people,
                                                            const CoverPlanned& planned, Day today);

/// What becomes of that access when `cover` is ended today: it ends with today, or at once where
/// the cover had not begun. None where it was not given for a cover, or where another cover of
/// theirs needs it. `book` is as it was before.
[[nodiscard]] std::optional<Details> access_after(const People& people, const CoverBook& book,
                                                  const Cover& cover, Day today);

}  // namespace rackside

#pragma once
// What a keeper can plan, and what is said to somebody whose days it is not.

#include "core/cover/cover_book.hpp"
#include "core/people/people.hpp"
#include "core/values/result.hpp"
#include "core/words/date_style.hpp"

namespace rackside {

/// Nothing can be foreseen for longer than this.
inline constexpr std::chrono::days longest_cover{90};

/// Errors, BadInput: nobody named, dates reversed, all of it in the past, too long, or a day and a
/// rack that somebody stands in for already.
[[nodiscard]] Result<void> check_cover(const CoverBook& book, const CoverPlanned& planned,
                                       Day today, DateStyle dates = DateStyle::DayMonth);

/// Whether `cover` can be ended now. Errors: NotNow when it is over already.
[[nodiscard]] Result<void> check_end(const Cover& cover, Day today,
                                     DateStyle dates = DateStyle::DayMonth);

/// What the badge of an assistant is told on `day`: empty while a cover of theirs holds, where
/// there never was one, and where access was given anew after the last one was over. "Your cover
/// ended on Sunday 8 June. Ask the keeper before you go on."
[[nodiscard]] std::string not_your_days(const CoverBook& book, const Person& person, Day day,
                                        DateStyle dates = DateStyle::DayMonth);

/// "from Tuesday 3 to Sunday 8 June", with "for rack A and rack B" where it is not all of them.
[[nodiscard]] std::string cover_words(const Cover& cover, DateStyle dates = DateStyle::DayMonth);

}  // namespace rackside

#pragma once
// What a keeper can plan, and what is said to somebody whose days it is not.

#include "core/cover/cover_book.hpp"
#include "core/values/result.hpp"

namespace rackside {

/// Nothing can be foreseen for longer than this.
inline constexpr std::chrono::days longest_cover{90};

/// Errors, BadInput: nobody named, dates reversed, all of it in the past, too long, or a day and a
/// rack that somebody stands in for already.
[[nodiscard]] Result<void> check_cover(const CoverBook& book, const CoverPlanned& planned,
                                       Day today);

/// Whether `cover` can be ended now. Errors: NotNow when it is over already.
[[nodiscard]] Result<void> check_end(const Cover& cover, Day today);

/// What a badge of `who` is told on `day`: empty while a cover holds, or where there never was one.
/// "Your cover ended on Sunday 8 June. Ask the keeper before you go on."
[[nodiscard]] std::string not_your_days(const CoverBook& book, std::string_view who, Day day);

/// "from Tuesday 3 to Sunday 8 June", with "for rack A and rack B" where it is not all of them.
[[nodiscard]] std::string cover_words(const Cover& cover);

}  // namespace rackside

#pragma once
// Small pieces of sentences.

#include <string>
#include <string_view>

#include "core/values/time.hpp"

namespace rackside {

/// "1 day", "3 days".
[[nodiscard]] std::string count_of(int number, std::string_view one);
/// "crickets", "roaches", "blackberries"; a word that ends in s stays as it is.
[[nodiscard]] std::string plural(std::string_view word);
/// "today", "yesterday", "3 days ago".
[[nodiscard]] std::string days_ago(int days);
/// "today", "tomorrow", "on Friday 12 June", with the year where it is not this one.
[[nodiscard]] std::string on_day_words(Day day, Day today);
/// A half-sentence as a line of its own: "refused 3 meals" becomes "Refused 3 meals."
[[nodiscard]] std::string as_line(std::string_view text);
/// "8 of 10"; never "0 of 10" and never "10 of 10", because nothing is certain.
[[nodiscard]] std::string in_ten(double probability);

}  // namespace rackside

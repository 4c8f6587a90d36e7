#pragma once
// Small pieces of sentences.

#include <cstdint>
#include <string>
#include <string_view>

namespace rackside {

/// "1 day", "3 days".
[[nodiscard]] std::string count_of(std::int64_t number, std::string_view one);
/// "crickets", "roaches", "blackberries"; a word that ends in s stays as it is.
[[nodiscard]] std::string plural(std::string_view word);
/// A half-sentence as a line of its own: "refused 3 meals" becomes "Refused 3 meals."
[[nodiscard]] std::string as_line(std::string_view text);
/// "8 of 10"; never "0 of 10" and never "10 of 10", because nothing is certain.
[[nodiscard]] std::string in_ten(double probability);

}  // namespace rackside

#pragma once
// Names made shorter so that they stay readable.

#include <cstddef>
#include <string>
#include <string_view>

namespace rackside {

/// `text` on one line: control characters become blanks, blanks at the ends go, and what is not
/// UTF-8 becomes the replacement character.
[[nodiscard]] std::string one_line(std::string_view text);

/// "H. himalayana" for "Haplocosmia himalayana": the genus becomes its first letter where a name
/// in lower case follows. Any other text comes back as it is.
[[nodiscard]] std::string abbreviated_species(std::string_view species);

/// How many letters `text` has, marks that belong to a letter not counted.
[[nodiscard]] std::size_t letter_count(std::string_view text);

/// The first `letters` letters of `text` with an ellipsis, which says that something was cut off. A
/// letter keeps its combining marks. `text` must be UTF-8.
[[nodiscard]] std::string cut_after(std::string_view text, std::size_t letters);

}  // namespace rackside

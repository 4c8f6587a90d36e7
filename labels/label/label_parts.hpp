#pragma once
// The parts of a label's text: what they say, in which face and how large.

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "labels/label/label_content.hpp"
#include "labels/label/text_ruler.hpp"

namespace rackside {

enum class Part { Code, Warning, Species, Source, Date, Instar, CommonName };

/// From the most needed to the least, which is also the order on the label.
inline constexpr std::array parts_by_need{Part::Code, Part::Warning, Part::Species,   Part::Source,
                                          Part::Date, Part::Instar,  Part::CommonName};

/// Letters in millimetres an em. `preferred` is for a room 17 mm high or less; larger rooms get
/// larger letters. Print below `least` is hard to read from an arm's length.
struct LetterSizes {
  double preferred;
  double least;
};

[[nodiscard]] LetterSizes letter_sizes(Part part);
[[nodiscard]] Face face_of(Part part);
/// "code in letters", "source": for the sentence that says what was left out.
[[nodiscard]] std::string_view name_of(Part part);

struct Wording {
  Part part;
  std::string full;
  std::string shorter;  // the same as `full` where nothing shorter says it
};

/// The parts that have something to say on this label, the most needed first.
[[nodiscard]] std::vector<Wording> wordings(const LabelContent& content);

/// A name that still says something with its end cut off; a code or a date does not.
[[nodiscard]] bool may_be_cut(Part part);

}  // namespace rackside

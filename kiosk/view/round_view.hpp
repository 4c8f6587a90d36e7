#pragma once
// What the round screen, the carrying list before it and the summary after it say.

#include <optional>
#include <string>
#include <vector>

#include "kiosk/model/model.hpp"
#include "kiosk/view/strip_view.hpp"

namespace rackside::kiosk {

/// A line of the round: the beginning of a shelf, or a tub on it.
struct RoundLine {
  enum class Kind { Shelf, Tub };
  Kind kind = Kind::Tub;
  std::string position;
  std::string title;   // species; of a shelf: where it is and how many tubs are due there
  std::string detail;  // what to do; "done" is told by striking it through
  std::optional<Code> code;
  bool done = false;
  bool urgent = false;
  std::optional<SmallStrip> strip;
  bool quiet = false;  // waits or is to be left alone: told so that nobody wonders

  bool operator==(const RoundLine&) const = default;
};

struct RoundView {
  std::string title;   // "Wednesday 25 November"
  std::string detail;  // "12 of 34 · about 40 minutes left"
  std::vector<std::string> notes;
  std::size_t lines = 0;  // how many there are
  std::size_t next = 0;   // index of the first one that is still to do
  bool under_way = false;
  bool can_set_out = false;

  bool operator==(const RoundView&) const = default;
};

[[nodiscard]] RoundView view_round(const Model& model);
/// At most `most` of its lines from `first` on. Only what is shown is put into words: a round may
/// have thousands.
[[nodiscard]] std::vector<RoundLine> round_lines(const Model& model, std::size_t first,
                                                 std::size_t most);

/// Prey of one kind and size, and what to touch when there is none of it.
struct CarryPrey {
  std::string words;  // "Bring 11 crickets of about 8 mm: 14 planned."
  AskPrey instead;
  bool operator==(const CarryPrey&) const = default;
};

/// What to take along, a line each, then the cautions.
struct CarryView {
  std::vector<CarryPrey> prey;
  std::vector<std::string> carry;
  std::vector<std::string> cautions;
  bool operator==(const CarryView&) const = default;
};
[[nodiscard]] CarryView view_carry(const Model& model);

struct SummaryView {
  std::string words;  // "31 of 34 done. 22 took, 6 refused, 2 left their prey."
  std::vector<RoundLine> lines;
  bool operator==(const SummaryView&) const = default;
};
[[nodiscard]] SummaryView view_summary(const Model& model);

}  // namespace rackside::kiosk

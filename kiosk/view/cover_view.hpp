#pragma once
// What the screens about somebody who stands in say.

#include <string>
#include <vector>

#include "kiosk/model/model.hpp"
#include "kiosk/view/form_field.hpp"

namespace rackside::kiosk {

/// A title, what there is to say under it, and where touching it leads.
struct ToldPart {
  std::string title;
  std::vector<std::string> sentences;
  std::optional<Intent> touch;
  bool operator==(const ToldPart&) const = default;
};

struct CoverView {
  std::vector<ToldPart> parts;  // the first says who stands in and when
  bool shown = false;           // there is a cover
  std::string end_word;         // "end it"
  bool more = false;            // another cover can be shown
  bool report = false;          // there is one to be reported on
  bool printing = false;
  bool operator==(const CoverView&) const = default;
};
[[nodiscard]] CoverView view_cover(const Model& model);

/// The form for one.
[[nodiscard]] std::vector<FormField> view_new_cover(const Model& model);

/// One day to choose from.
struct DayCell {
  Day day;
  std::string word;   // "3", "1 June"
  std::string taken;  // who stands in then
  bool open = true;
  bool chosen = false;
  bool operator==(const DayCell&) const = default;
};
inline constexpr int days_a_week = 7;
/// Whole weeks from this one on, Monday first.
[[nodiscard]] std::vector<DayCell> view_days(const Model& model);
/// "Mon", ... as the keeper reads dates.
[[nodiscard]] std::vector<std::string> weekday_heads(const Model& model);

struct ReturnView {
  std::vector<ToldPart> parts;
  bool ready = false;  // can be printed
  bool more = false;
  bool printing = false;
  bool operator==(const ReturnView&) const = default;
};
/// What calls for the keeper first: deaths and flags, then moults, then what was not done; in
/// walking order among those. Tubs where all went as planned are only counted.
[[nodiscard]] ReturnView view_return(const Model& model);

}  // namespace rackside::kiosk

#pragma once
// What the screens about somebody who stands in know.

#include <optional>
#include <string>
#include <vector>

#include "core/cover/cover_plan.hpp"
#include "core/cover/return_report.hpp"
#include "core/cover/supplies.hpp"

namespace rackside::kiosk {

/// Of the plan of a cover what a screen says. The whole is a line for every tub and day, for paper.
struct CoverBrief {
  Supplies supplies;
  std::vector<TubRemark> moults;  // where one may be met
  bool operator==(const CoverBrief&) const = default;
};

/// The cover that is shown, and what is foreseen for it.
struct CoverPage {
  std::optional<EventId> shown;
  std::optional<CoverBrief> brief;
  bool reading = false;   // being foreseen
  double worked = 0;      // how far, from 0 to 1
  bool ending = false;    // asked once whether it is to end
  bool printing = false;  // its sheet
  bool operator==(const CoverPage&) const = default;
};

/// The cover that is reported on.
struct ReturnPage {
  std::optional<EventId> shown;
  std::optional<ReturnReport> report;
  bool reading = false;
  double worked = 0;
  bool printing = false;
  bool operator==(const ReturnPage&) const = default;
};

enum class WhichDay { First, Last };

/// A cover that is being planned.
struct CoverForm {
  std::string who;
  std::optional<Day> from;
  std::optional<Day> to;
  std::vector<std::string> racks;  // none is all of them
  WhichDay asked = WhichDay::First;
  bool operator==(const CoverForm&) const = default;
};

}  // namespace rackside::kiosk

#pragma once
// What has to be in the house for several days: prey by kind and size, and who needs water when.

#include <optional>
#include <string>
#include <vector>

#include "core/collection/collection.hpp"
#include "core/cover/cover_plan.hpp"

namespace rackside {

/// Prey of one kind and size for all of the days.
struct PreySupply {
  std::string kind;
  std::optional<Millimetres> size;
  int planned = 0;              // if everything were taken
  double expected_refused = 0;  // of these
  int get = 0;                  // what is expected to be eaten and a margin, at most `planned`

  bool operator==(const PreySupply&) const = default;
};

/// Visits of one day.
struct DayLoad {
  Day day;
  int visits = 0;  // tubs to go to
  int meals = 0;
  int water = 0;  // tubs to mist and fill
  bool operator==(const DayLoad&) const = default;
};

struct Supplies {
  Day from;
  Day to;
  std::vector<PreySupply> prey;  // by kind, then size
  std::vector<DayLoad> days;
  int tubs = 0;           // living animals' tubs
  Wording wording;        // how they are told
  int without_water = 0;  // tubs for which water was never written down, so none can be planned

  bool operator==(const Supplies&) const = default;
};

/// `margin` in standard deviations of the number eaten, as the rule of that name. An animal that
/// refuses once mostly goes on refusing, so all its meals count as one trial: the margin is wider
/// than for as many meals of different animals.
[[nodiscard]] Supplies supplies_for(const std::vector<CoverDay>& days, const Collection& collection,
                                    double margin, const Wording& wording = {});

/// "Get 38 crickets of about 8 mm: 44 planned, about 9 likely to be refused, 3 for safety."
[[nodiscard]] std::string format_supply(const PreySupply& prey, Units units = {});

[[nodiscard]] std::string supplies_as_text(const Supplies& supplies);
[[nodiscard]] std::string supplies_as_json(const Supplies& supplies);

}  // namespace rackside

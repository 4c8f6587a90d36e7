#pragma once
// What the round will say at one tub on each coming day, as far as that can be told today. Pure.
//
// The same rules are asked that the kiosk will ask, with the forecast of each day made from what is
// known now. What is done today changes what is said tomorrow, so something has to be assumed in
// between: that everything said is done, food is taken, looks show nothing new, and an animal on
// its back has moulted by the next day. A day that stands on such an assumption says so.

#include <map>
#include <span>
#include <string>
#include <vector>

#include "core/care/instruction.hpp"

namespace rackside {

/// Forecasts of coming days, made from what is known on the first of them.
struct Outlook {
  std::vector<Moment> days;  // now, and the same hour of every day after it
  std::map<AnimalId, std::vector<Forecast>> forecasts;  // one a day; none for some animals

  /// Null where there is none.
  [[nodiscard]] const Forecast* forecast(const AnimalId& animal, std::size_t day) const;
  bool operator==(const Outlook&) const = default;
};

struct ForeseenDay {
  Day day;
  Instruction said;
  std::string only;       // "if it eats on Tue 3 June"; empty: as things stand today
  std::string otherwise;  // "If it refuses: again on Sat 7 June"; with a meal only

  bool operator==(const ForeseenDay&) const = default;
};

/// One entry a day of `outlook`. `animal` must be living; `air` as for instruct.
[[nodiscard]] std::vector<ForeseenDay> foresee(AnimalState animal, const Outlook& outlook,
                                               const CareRules& rules, const RackClimate* air);

}  // namespace rackside

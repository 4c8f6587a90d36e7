#pragma once
// What a keeper chose about how dates and measures are told.

#include "core/words/date_style.hpp"
#include "core/words/measures.hpp"

namespace rackside {

struct Wording {
  DateStyle dates = DateStyle::DayMonth;
  Units units;
  bool operator==(const Wording&) const = default;
};

}  // namespace rackside

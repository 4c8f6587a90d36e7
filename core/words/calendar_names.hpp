#pragma once
// What months and weekdays are called.

#include <array>
#include <string_view>

#include "core/words/date_style.hpp"

namespace rackside {

struct CalendarNames {
  std::array<std::string_view, 12> months;
  std::array<std::string_view, 12> brief_months;
  std::array<std::string_view, 7> weekdays;  // Sunday first
  std::array<std::string_view, 7> brief_weekdays;
};

[[nodiscard]] const CalendarNames& calendar_names(DateStyle style);

}  // namespace rackside

#pragma once
// How a date is written where people read it. The files keep to ISO 8601 whatever is chosen here.

#include <array>
#include <optional>
#include <string_view>

namespace rackside {

enum class DateStyle {
  DayMonth,  // Tuesday 3 November
  MonthDay,  // Tuesday, November 3
  Iso,       // Tuesday 2029-11-03: ISO 8601
  German,    // Dienstag, 3. November
  French,    // mardi 3 novembre
  Spanish,   // martes, 3 de noviembre
  Italian,   // martedì 3 novembre
  Dutch,     // dinsdag 3 november
};

inline constexpr std::array all_date_styles{
    DateStyle::DayMonth, DateStyle::MonthDay, DateStyle::Iso,     DateStyle::German,
    DateStyle::French,   DateStyle::Spanish,  DateStyle::Italian, DateStyle::Dutch};

/// "day month", "month day", "iso", "german": a style's stable name in settings.
[[nodiscard]] std::string_view date_style_name(DateStyle style);
[[nodiscard]] std::optional<DateStyle> date_style_of(std::string_view name);

}  // namespace rackside

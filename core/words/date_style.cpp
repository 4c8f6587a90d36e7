#include "core/words/date_style.hpp"

namespace rackside {

std::string_view date_style_name(DateStyle style) {
  switch (style) {
    case DateStyle::DayMonth: return "day month";
    case DateStyle::MonthDay: return "month day";
    case DateStyle::Iso: return "iso";
    case DateStyle::German: return "german";
    case DateStyle::French: return "french";
    case DateStyle::Spanish: return "spanish";
    case DateStyle::Italian: return "italian";
    case DateStyle::Dutch: return "dutch";
  }
  return {};
}

std::optional<DateStyle> date_style_of(std::string_view name) {
  for (const DateStyle style : all_date_styles)
    if (date_style_name(style) == name) return style;
  return std::nullopt;
}

}  // namespace rackside

#include "kiosk/view/record_filter.hpp"

namespace rackside::kiosk {
namespace {

template <class Kind, class... Kinds>
bool is_any(const Details& details) {
  return (std::holds_alternative<Kind>(details) || ... || std::holds_alternative<Kinds>(details));
}

}  // namespace

RecordFilter kind_of_record(const Details& details) {
  if (is_any<Offered, PreyRemoved>(details)) return RecordFilter::Meals;
  if (is_any<rackside::Moulted, ShedFound, ShedRemoved, rackside::Measured, rackside::Sexed>(
          details))
    return RecordFilter::Moults;
  if (is_any<Looked>(details)) return RecordFilter::Signs;
  if (is_any<rackside::Misted, WaterFilled, TemperatureRead, HumidityRead>(details))
    return RecordFilter::Care;
  return RecordFilter::Other;
}

std::string_view filter_word(RecordFilter filter) {
  switch (filter) {
    case RecordFilter::All: return "all";
    case RecordFilter::Meals: return "meals";
    case RecordFilter::Moults: return "moults";
    case RecordFilter::Signs: return "signs";
    case RecordFilter::Care: return "care";
    case RecordFilter::Other: return "the rest";
  }
  return {};
}

}  // namespace rackside::kiosk

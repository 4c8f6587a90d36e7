#include "core/program/named_day.hpp"

namespace rackside::program {

NamedDay named_day(Day day, Clock& clock) {
  using namespace std::chrono_literals;
  const auto offset = clock.offset_at(Instant{day} + 12h);
  const auto offset_at_end = clock.offset_at(Instant{day} + 24h);
  return {day, on_day(day, offset).moment, Instant{day} + 24h - offset_at_end - 1ms};
}

Result<NamedDay> named_day(const std::string& text, Clock& clock) {
  const auto day = parse_day(text);
  if (!day) return tl::unexpected(day.error());
  return named_day(*day, clock);
}

}  // namespace rackside::program

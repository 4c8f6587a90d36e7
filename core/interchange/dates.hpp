#pragma once
// Dates and times in the files.

#include "core/clock/clock.hpp"
#include "core/interchange/table.hpp"

namespace rackside::interchange {

/// What the wall calendar and clock say while a file is read.
struct Today {
  Moment now;
  Clock& clock;  // for the offset of other days
};

/// A day before 1900 or later than tomorrow is a slip of the pen and refused; tomorrow is not,
/// because it may have begun where the file was written. None where the cell is empty.
[[nodiscard]] std::optional<Day> read_day(const Row& row, std::size_t column, const Today& today);
/// The same for moments: at most a day from now. A day alone is read in the zone of this machine.
[[nodiscard]] When read_when(const Row& row, std::size_t column, const Today& today);

/// The first moment of a day: whoever came on that day was there for all that happened on it.
[[nodiscard]] When beginning_of(Day day, const Today& today);

}  // namespace rackside::interchange

// Measures and readings, with their units.

#include <utility>

#include "core/event/words.hpp"
#include "core/interchange/event_kinds.hpp"

namespace rackside::interchange {
namespace {

double read_value(const Row& row) {
  const auto value = row.decimal(EventValue);
  if (!value) row.refuse(EventValue, "The number that was read is missing.");
  return *value;
}

// "leg span", or "carapace; from the shed": the word goes, what else was noted stays. A word
// anywhere else in the note says what was measured, too, and stays part of it.
Measure take_measure(Reading& reading) {
  const std::string lower = reading.row.word(EventNote);
  std::optional<Measure> found;
  for (const Measure measure : {Measure::LegSpan, Measure::Carapace}) {
    const std::string_view word = word_of(measure);
    if (lower.starts_with(word)) {
      if (trimmed(reading.note).size() == word.size()) {
        reading.note.clear();
        return measure;
      }
      if (reading.note.size() > word.size() + 1 && reading.note.substr(word.size(), 2) == "; ") {
        reading.note.erase(0, word.size() + 2);
        return measure;
      }
    }
    if (lower.find(word) == std::string::npos) continue;
    if (found) reading.row.refuse(EventNote, "The note names both leg span and carapace.");
    found = measure;
  }
  if (!found)
    reading.row.refuse(EventNote, "The note must say what was measured: leg span or carapace.");
  return *found;
}

// The note of a reading without an animal is the rack.
std::string take_rack(Reading& reading) {
  return reading.animal ? std::string{} : std::exchange(reading.note, {});
}

}  // namespace

Details read_measure(Reading& reading) {
  const Row& row = reading.row;
  const double value = read_value(row);
  const std::string unit = row.word(EventUnit);
  Millimetres length;
  if (unit == "mm")
    length = {value};
  else if (unit == "cm")
    length = {value * 10};
  else if (unit == "in")
    length = from_inches(value);
  else
    refuse_word(row, EventUnit, "mm, cm, in");
  if (length.value <= 0 || length.value > longest_mm)
    row.refuse(EventValue, "A length is more than 0 and at most 1000 mm.");
  return Measured{take_measure(reading), length};
}

Details read_temperature(Reading& reading) {
  const double value = read_value(reading.row);
  const std::string unit = reading.row.word(EventUnit);
  if (unit != "c" && unit != "f") refuse_word(reading.row, EventUnit, "C, F");
  const Celsius temperature = unit == "c" ? Celsius{value} : from_fahrenheit(value);
  if (temperature.value < -50 || temperature.value > 80)
    reading.row.refuse(EventValue, "No room is that cold or warm. Is the unit right?");
  return TemperatureRead{temperature, take_rack(reading)};
}

Details read_humidity(Reading& reading) {
  const double value = read_value(reading.row);
  if (reading.row.word(EventUnit) != "%") refuse_word(reading.row, EventUnit, "%");
  if (value < 0 || value > 100)
    reading.row.refuse(EventValue, "Relative humidity is from 0 to 100 %.");
  return HumidityRead{Percent{value}, take_rack(reading)};
}

}  // namespace rackside::interchange

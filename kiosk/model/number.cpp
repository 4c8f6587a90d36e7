#include <fmt/format.h>

#include <charconv>

#include "core/climate/sensor_fields.hpp"
#include "core/event/words.hpp"
#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

constexpr std::size_t most_digits = 6;

// The largest leg span on record is about 300 mm, of a carapace about a third of that (from
// memory): a number beyond has the wrong unit or a digit too many.
constexpr double most_leg_span_mm = 350;
constexpr double most_carapace_mm = 110;
constexpr double least_length_mm = 0.3;

std::optional<double> number_of(const std::string& text) {
  double value = 0;
  const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (problem != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  return value;
}

std::optional<Details> measured(Measure what, double value, Units units) {
  const Millimetres length = in_millimetres(value, units.length);
  const double most = what == Measure::LegSpan ? most_leg_span_mm : most_carapace_mm;
  if (length.value < least_length_mm || length.value > most) return std::nullopt;
  return Measured{what, length};
}

std::optional<Details> read(const NumberQuestion& question, double value, Units units) {
  switch (question.what) {
    case NumberOf::LegSpan: return measured(Measure::LegSpan, value, units);
    case NumberOf::Carapace: return measured(Measure::Carapace, value, units);
    case NumberOf::Temperature: {
      const bool fahrenheit = units.temperature == TemperatureUnit::Fahrenheit;
      const auto celsius = sensor::temperature_of(value, fahrenheit ? "F" : "C");
      if (!celsius) return std::nullopt;
      return TemperatureRead{*celsius, question.rack};
    }
    case NumberOf::Humidity: {
      const auto percent = sensor::humidity_of(value, "%");
      if (!percent) return std::nullopt;
      return HumidityRead{*percent, question.rack};
    }
  }
  return std::nullopt;
}

std::string where(const std::string& rack) { return rack.empty() ? "" : ", rack " + rack; }

}  // namespace

void ask_number(Model& model, const NumberQuestion& question) {
  // The same question again finds what was half answered.
  if (!model.number || model.number->question != question)
    model.number = NumberPage{.question = question};
  go_to(model, ScreenName::Number);
}

void type_number(Model& model, char c) {
  std::string& typed = model.number->typed;
  if (c == ',') c = '.';
  const bool digit = c >= '0' && c <= '9';
  const bool point = c == '.' && typed.find('.') == std::string::npos;
  if ((digit || point) && typed.size() < most_digits) typed += c;
}

Effects enter_number(Model& model, const Stamp& stamp) {
  if (!model.number || model.number->typed.empty() || !model.saving.empty()) return {};
  const NumberQuestion& question = model.number->question;
  const auto value = number_of(model.number->typed);
  const auto details =
      value ? read(question, *value, model.rules.collection.wording.units) : std::nullopt;
  if (!details) {
    tell(model, Tone::Problem,
         fmt::format("{} cannot be. Nothing was saved; type it again.", model.number->typed));
    return {};
  }
  model.number->draft = stamp.fresh;
  model.saving.push_back(stamp.fresh);
  Draft draft = draft_now(model.by, stamp, *details);
  draft.animal = question.animal;
  draft.enclosure = question.tub;
  go_back(model);
  return {SaveDrafts{{std::move(draft)}}};
}

std::string number_words(const Details& details, Units units) {
  if (const auto* measure = std::get_if<Measured>(&details))
    return fmt::format("{} {}", word_of(measure->what), length_words(measure->length, units));
  if (const auto* read = std::get_if<TemperatureRead>(&details))
    return exact_temperature_words(read->temperature, units) + where(read->rack);
  if (const auto* read = std::get_if<HumidityRead>(&details))
    return fmt::format("humidity {:g} %{}", read->humidity.value, where(read->rack));
  return {};
}

}  // namespace rackside::kiosk

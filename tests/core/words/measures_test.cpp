#include "core/words/measures.hpp"

#include "tests/frame.hpp"

using namespace rackside;

namespace {

constexpr Units centimetres{LengthUnit::Centimetre, TemperatureUnit::Celsius};
constexpr Units inches{LengthUnit::Inch, TemperatureUnit::Fahrenheit};

}  // namespace

TEST_CASE("a length is told in the keeper's unit") {
  CHECK(length_words({12.5}, {}) == "12.5 mm");
  CHECK(length_words({12}, {}) == "12 mm");
  CHECK(length_words({12.5}, centimetres) == "1.25 cm");
  CHECK(length_words({25.4}, inches) == "1 in");  // an inch is 25.4 mm: ISO 80000-3
  CHECK(length_words({110}, inches) == "4.33 in");
}

TEST_CASE("prey is told about as closely as one chooses it") {
  CHECK(about_length_words({8.4}, {}) == "8 mm");
  CHECK(about_length_words({8.4}, centimetres) == "0.8 cm");
  CHECK(about_length_words({8.4}, inches) == "0.3 in");
}

TEST_CASE("a temperature is told in the keeper's unit") {
  CHECK(temperature_words({24.4}, {}) == "24 °C");
  CHECK(temperature_words({100}, inches) == "212 °F");  // water boils: the scales' definition
  CHECK(temperature_words({-0.3}, {}) == "0 °C");
  CHECK(temperature_words({-40}, inches) == "-40 °F");
  CHECK(exact_temperature_words({24.44}, {}) == "24.4 °C");
  CHECK(exact_temperature_words({24}, inches) == "75.2 °F");
}

TEST_CASE("units are found again by their words") {
  for (const LengthUnit unit : all_length_units) CHECK(length_unit_of(unit_word(unit)) == unit);
  for (const TemperatureUnit unit : all_temperature_units)
    CHECK(temperature_unit_of(unit_word(unit)) == unit);
  CHECK(temperature_unit_of("F") == TemperatureUnit::Fahrenheit);
  CHECK_FALSE(length_unit_of("ell"));
}

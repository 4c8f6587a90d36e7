#include "kiosk/view/setup_view.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace rackside::kiosk {
namespace {

using std::chrono::minutes;

constexpr double density_step = 0.1;

// A choice that sets one member and leaves the others.
template <class Value>
SetupChoice choice(const Model& model, std::string word, Value Settings::*member, Value value) {
  Settings settings = model.settings;
  const bool chosen = settings.*member == value;
  settings.*member = std::move(value);
  return {std::move(word), SetUp{std::move(settings)}, chosen};
}

SetupRow palette_row(const Model& model) {
  return {"colours",
          "night is a deep red",
          {choice(model, "day", &Settings::palette, PaletteName::Day),
           choice(model, "dusk", &Settings::palette, PaletteName::Dusk),
           choice(model, "night", &Settings::palette, PaletteName::Night)}};
}

SetupRow blank_row(const Model& model) {
  SetupRow row{"goes dark", "after so many minutes", {}};
  for (const int after : {2, 10, 30})
    row.choices.push_back(
        choice(model, fmt::format("{}", after), &Settings::blank_after, minutes{after}));
  row.choices.push_back(choice(model, "never", &Settings::blank_after, minutes{0}));
  return row;
}

SetupRow size_row(const Model& model, double pixels_per_mm) {
  using Density = std::optional<double>;
  const double finer = std::min(most_density, pixels_per_mm * (1 + density_step));
  const double coarser = std::max(least_density, pixels_per_mm / (1 + density_step));
  SetupRow row{"size",
               "keys are 15 mm high if right",
               {choice(model, "smaller", &Settings::pixels_per_mm, Density{coarser}),
                choice(model, "larger", &Settings::pixels_per_mm, Density{finer}),
                choice(model, "guessed", &Settings::pixels_per_mm, Density{})}};
  row.choices[0].chosen = row.choices[1].chosen = false;
  return row;
}

SetupRow motion_row(const Model& model) {
  return {"motion",
          "a new record slides into the strip",
          {choice(model, "shown", &Settings::motion, Motion::Shown),
           choice(model, "off", &Settings::motion, Motion::Off)}};
}

}  // namespace

std::vector<SetupRow> view_setup(const Model& model, double pixels_per_mm) {
  return {palette_row(model), size_row(model, pixels_per_mm), blank_row(model), motion_row(model)};
}

}  // namespace rackside::kiosk

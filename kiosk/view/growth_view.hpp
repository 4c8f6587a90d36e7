#pragma once
// What the growth screen says about the open animal: its measures, moult by moult.

#include <string>
#include <vector>

#include "core/growth/growth.hpp"
#include "kiosk/model/model.hpp"

namespace rackside::kiosk {

struct GrowthRow {
  std::string moult;  // "3 Nov 2029"; "before" for the time before the first moult on record
  std::string instar;
  std::string leg_span;  // "54 mm"; empty where it was not measured
  std::string carapace;
  bool operator==(const GrowthRow&) const = default;
};

/// One measure as dots over the moults; `size` in millimetres.
struct GrowthCurve {
  struct Dot {
    std::size_t step = 0;
    double size = 0;
    bool plausible = true;
    bool operator==(const Dot&) const = default;
  };
  std::string word;  // "leg span"
  std::vector<Dot> dots;
  std::optional<double> next;  // after one more moult, if it goes on like this
  bool operator==(const GrowthCurve&) const = default;
};

struct GrowthView {
  std::string title;
  std::vector<GrowthRow> rows;  // the latest first
  std::size_t steps = 0;
  std::vector<GrowthCurve> curves;     // leg span, carapace: those that were measured
  std::vector<std::string> sentences;  // how it grew, and what to expect
  NumberQuestion leg_span;
  NumberQuestion carapace;
  bool can_measure = false;
  bool operator==(const GrowthView&) const = default;
};

[[nodiscard]] GrowthView view_growth(const Model& model);

}  // namespace rackside::kiosk

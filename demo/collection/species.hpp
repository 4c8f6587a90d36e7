#pragma once
// The species of the demo's collection. What is said of them is rough and only drives the
// invention; nothing outside the demo reads it.

#include <string>
#include <vector>

namespace rackside::demo {

struct Species {
  std::string name;
  std::string common_name;
  double pace;           // length of its moult cycles beside the usual
  double adult_span_mm;  // leg span
  int adult_instar;
  bool shows_patch;     // a bald patch that darkens
  bool seals_in;        // webs or plugs its retreat
  double fasts_a_year;  // long fasts without a reason, a year
};

[[nodiscard]] const std::vector<Species>& demo_species();

}  // namespace rackside::demo

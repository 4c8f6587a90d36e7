#pragma once
// Why a symbol that is there cannot be read, from measurements on it.

#include <optional>

#include "labels/reader/guidance.hpp"
#include "labels/reader/symbol_solver.hpp"

namespace rackside {

struct Symptoms {
  double module_px = 0;  // pixels a module along its longer axis
  double contrast = 0;   // grey levels between paper and ink
  double crispness = 1;  // how much of the contrast is left in lines of one module: 1 in focus
  double glare = 0;      // part of the symbol that is brighter than its paper
  double squeeze = 1;    // shorter axis by longer: 0.5 is a tilt of 60 degrees
};

[[nodiscard]] Symptoms measure(const Plane& plane, const Unread& unread);
/// The same from a lone finder pattern and what lies around it, but for the squeeze.
[[nodiscard]] Symptoms measure(const Plane& plane, const FinderMark& mark);

/// What would help most; none when nothing measured is out of order.
[[nodiscard]] std::optional<Guidance> guidance_for(const Symptoms& symptoms);
/// The same where no grid fits: only what cannot be mistaken, as print and boards look like finder
/// patterns too.
[[nodiscard]] std::optional<Guidance> guidance_for_lone(const FinderMark& mark,
                                                        const Symptoms& symptoms);

}  // namespace rackside

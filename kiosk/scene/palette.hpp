#pragma once
// Colours by role. Paper and ink carry everything; one accent says "touch here".

#include <array>
#include <cstdint>

#include "kiosk/settings/settings.hpp"

namespace rackside::kiosk {

enum class Ink {
  Paper,     // the ground of every screen
  Slip,      // the ground of a tile: a slip of card laid on the paper
  Text,      // ink
  Soft,      // ink for captions and what is over; still read at arm's length
  Line,      // ruled lines
  Accent,    // touch here
  OnAccent,  // words and marks on the accent
  Wash,      // a thin wash under a curve
};
inline constexpr std::size_t ink_count = 8;

struct Colour {
  std::uint8_t red = 0;
  std::uint8_t green = 0;
  std::uint8_t blue = 0;
  bool operator==(const Colour&) const = default;
};

struct Palette {
  std::array<Colour, ink_count> colours;

  [[nodiscard]] Colour of(Ink ink) const { return colours[static_cast<std::size_t>(ink)]; }
};

/// Day is paper, dusk dark slate, night deep reds on black for a room of nocturnal animals.
[[nodiscard]] const Palette& palette(PaletteName name);

/// The contrast of two colours by the formula of WCAG 2.2 ("contrast ratio"), 1 to 21.
[[nodiscard]] double contrast(Colour a, Colour b);

}  // namespace rackside::kiosk

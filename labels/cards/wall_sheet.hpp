#pragma once
// The wall sheet of action cards: a code for everything that a tile of the tub screen records, for
// keepers with forceps or gloves in hand.

#include "core/action/action.hpp"
#include "labels/render/pages.hpp"
#include "labels/render/pango_text.hpp"
#include "labels/sheet/stock.hpp"

namespace rackside {

struct PlacedCard {
  Action action;
  Box box;              // millimetres
  double module = 0;    // of its symbol
  double symbol_x = 0;  // the symbol's own corner on the page, on a printer dot
  double symbol_y = 0;
};

struct PlacedHeading {
  std::string text;
  double x = 0;  // left end of the baseline
  double y = 0;
};

struct WallSheet {
  double width = 0;
  double height = 0;
  double heading_size = 0;  // of letters, millimetres
  double word_room = 0;     // for the lines below a symbol
  std::vector<PlacedCard> cards;
  std::vector<PlacedHeading> headings;
  Box cautions;  // the small print at the bottom
};

/// All cards on one page of this size. Errors: BadInput when the page is smaller than A5.
[[nodiscard]] Result<WallSheet> plan_wall_sheet(double width, double height, Resolution resolution);

/// For labels/render/pages.hpp. Both must outlive what comes back.
[[nodiscard]] Pages pages_of(const WallSheet& sheet, const PangoText& text);

}  // namespace rackside

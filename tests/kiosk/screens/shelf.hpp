#pragma once
// A shelf of thirty tubs with long names and one long life, alone and with people who work there.

#include "core/people/people.hpp"
#include "tests/kiosk/screens/collections.hpp"

namespace rackside::tests {

inline constexpr const char* longest =
    "Pseudohapalopus cf. spinulopalpus var. longissima \"Cordillera\"";

struct Shelf {
  TableKiosk kiosk;
  Code first, last;

  Shelf();
  kiosk::Model show(kiosk::ScreenName screen);
  /// The first tub, in premoult, with much to say about its next moult, which may be that far off.
  void open_with_forecast(int days_ahead = 60);
};

/// With two keepers, many assistants, long names, one whose time is over.
struct Staff : Shelf {
  Staff();
  static std::string keeper() { return "Maximiliane von der Heyden-Osterwald"; }
  kiosk::Model with_pin(const kiosk::Intent& then);
};

}  // namespace rackside::tests

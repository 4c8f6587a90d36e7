#pragma once
// What the air screen says: per rack what was read last, what is wanted, and what is off.

#include <string>
#include <vector>

#include "kiosk/model/model.hpp"

namespace rackside::kiosk {

/// One line of the last days: `x` from 0 (a week ago) to 1 (now), `y` from 0 to 1 over the range
/// that is drawn.
struct AirLine {
  std::vector<std::pair<double, double>> points;
  double wanted = 0;  // the height of the limit below which it is too cold or too dry
  bool operator==(const AirLine&) const = default;
};

struct AirValue {
  std::string reading;  // "24.3 °C"; "not read" where there is none
  std::string age;      // "3 hours ago"
  std::string wanted;   // "20 °C or more"
  bool known = false;
  AirLine line;
  NumberQuestion question;
  bool operator==(const AirValue&) const = default;
};

struct AirRow {
  std::string title;  // "rack A", "the room"
  AirValue temperature;
  AirValue humidity;
  std::string dew;  // "dew point 15 °C"; empty without both
  std::string off;  // "Too cold. Too dry: 3 moults near."; empty where all is well
  bool operator==(const AirRow&) const = default;
};

/// The room, then the racks in walking order.
[[nodiscard]] std::vector<AirRow> view_air(const Model& model);

}  // namespace rackside::kiosk

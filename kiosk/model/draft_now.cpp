// What is written just now.

#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {

Draft draft_now(std::string by, const Stamp& stamp, Details details) {
  return Draft{.id = stamp.fresh,
               .by = std::move(by),
               .when = When{stamp.now, Precision::Exact},
               .animal = {},
               .enclosure = {},
               .details = std::move(details),
               .note = {}};
}

}  // namespace rackside::kiosk

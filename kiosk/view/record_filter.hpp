#pragma once
// Which records belong together on the records screen.

#include <string_view>

#include "kiosk/model/model.hpp"

namespace rackside::kiosk {

[[nodiscard]] RecordFilter kind_of_record(const Details& details);
/// "all", "meals".
[[nodiscard]] std::string_view filter_word(RecordFilter filter);

}  // namespace rackside::kiosk

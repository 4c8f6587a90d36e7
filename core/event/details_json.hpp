#pragma once
// Details as the log's file keeps them: the kind's stable name beside a small JSON object with
// that kind's members. Members that say nothing (empty, unknown, the default) are left out.

#include <string>
#include <string_view>

#include "core/event/details.hpp"

namespace rackside {

[[nodiscard]] std::string details_to_json(const Details& details);

/// Errors: NewerVersion when the kind is not one this program knows, BadInput when the object is
/// damaged or holds a word that is none of the kind's. Members it does not know are passed over.
[[nodiscard]] Result<Details> details_from_json(std::string_view kind, std::string_view json);

}  // namespace rackside

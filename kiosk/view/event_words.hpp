#pragma once
// One record as a line for people.

#include <string>

#include "core/collection/collection.hpp"
#include "core/event/event.hpp"
#include "core/words/measures.hpp"

namespace rackside::kiosk {

/// "refused 2 crickets, 8 mm", "shed found", "leg span 54 mm", "now in T4K7 9MWX".
[[nodiscard]] std::string event_words(const Event& event, const Collection& collection,
                                      Units units = {});

}  // namespace rackside::kiosk

#pragma once
// The one function that decides. Pure: the same model, intent and stamp give the same answer.

#include <utility>
#include <vector>

#include "kiosk/model/effect.hpp"
#include "kiosk/model/intent.hpp"
#include "kiosk/model/model.hpp"

namespace rackside::kiosk {

using Next = std::pair<Model, std::vector<Effect>>;

[[nodiscard]] Next update(Model model, const Intent& intent, const Stamp& stamp);

/// The model and the first effects of a program that has just started.
[[nodiscard]] Next begin(std::string by, Moment now, Settings settings = {});

}  // namespace rackside::kiosk

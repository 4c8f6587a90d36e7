#pragma once
// How a search learns that its time is up.

#include <functional>

namespace rackside {

/// Asked between steps and, ten times a millisecond or so, inside the long ones. Once it says
/// false, a search ends with what it has. No single step takes longer than 4 ms in a box of
/// 480 x 480 pixels (reading.md), which a time limit has to leave room for.
using TimeLeft = std::function<bool()>;

}  // namespace rackside

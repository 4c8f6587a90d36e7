#include "kiosk/view/tiles.hpp"

#include <algorithm>
#include <set>

#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::kiosk;

namespace {
constexpr std::array phases{Phase::Hardening, Phase::Feeding, Phase::Premoult, Phase::Moulting,
                            Phase::Finished};
}

TEST_CASE("in every phase every action but undo has one tile") {
  for (const Phase phase : phases) {
    const auto& order = tile_order(phase);
    const std::set<Action> once(order.begin(), order.end());
    CHECK(once.size() == order.size());
    CHECK(once.size() == all_actions.size() - 1);
    CHECK_FALSE(once.contains(Action::Undo));
  }
}

TEST_CASE("what is offered stands first while it feeds, and not before a moult") {
  CHECK(tile_order(Phase::Feeding).front() == Action::Took);
  for (const Phase phase : {Phase::Premoult, Phase::Moulting, Phase::Hardening}) {
    const auto& order = tile_order(phase);
    const auto took = std::ranges::find(order, Action::Took) - order.begin();
    CHECK(took >= 4);
  }
}

TEST_CASE("died is never among the first tiles") {
  for (const Phase phase : phases) {
    const auto& order = tile_order(phase);
    CHECK(std::ranges::find(order, Action::Died) - order.begin() >= 12);
  }
}

#include "tests/kiosk/screens/collections.hpp"

namespace rackside::tests {

const std::vector<Situation>& situations() {
  static const std::vector<Situation> list = [] {
    std::vector<Situation> all;
    for (const auto& some : {walk_situations(), tub_situations(), staff_situations(),
                             setup_situations(), hall_situations(), away_situations()})
      all.insert(all.end(), some.begin(), some.end());
    return all;
  }();
  return list;
}

const std::vector<kiosk::Panel>& panels() {
  static const std::vector<kiosk::Panel> list{kiosk::panel_of(800, 480), kiosk::panel_of(1024, 600),
                                              kiosk::panel_of(1280, 800),
                                              kiosk::panel_of(800, 1280)};
  return list;
}

}  // namespace rackside::tests

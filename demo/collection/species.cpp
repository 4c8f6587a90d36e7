#include "demo/collection/species.hpp"

namespace rackside::demo {

const std::vector<Species>& demo_species() {
  static const std::vector<Species> list{
      {"Haplocosmia himalayana", "", 1.0, 110, 10, false, true, 0.1},
      {"Orphnaecus philippinus", "", 0.9, 120, 9, false, true, 0.1},
      {"Omothymus violaceopes", "", 0.75, 200, 9, false, false, 0.1},
      {"Encyocratella olivacea", "", 0.95, 110, 9, false, true, 0.2},
      {"Neoholothele incei", "", 0.7, 70, 8, true, true, 0.05},
      {"Ephebopus cyanognathus", "", 0.9, 130, 9, false, true, 0.15},
      {"Hapalopus triseriatus", "", 0.7, 80, 8, true, true, 0.05},
      {"Kochiana brunnipes", "", 0.75, 70, 8, true, false, 0.05},
      {"Thrixopelma ockerti", "", 1.4, 150, 11, true, false, 0.4},
      {"Aphonopelma bicoloratum", "", 1.7, 130, 12, true, true, 0.6},
      {"Ybyrapora diversipes", "", 0.85, 120, 9, false, true, 0.1},
      {"Idiothele nigrofulva", "", 1.0, 90, 9, false, true, 0.2},
  };
  return list;
}

}  // namespace rackside::demo

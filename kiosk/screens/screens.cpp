#include "kiosk/screens/screens.hpp"

namespace rackside::kiosk {

Scene compose(const Model& model, const Panel& panel, const TextMetrics& metrics) {
  Composer composer(panel, metrics);
  for (const ScreenRow& row : screens)
    if (row.screen == model.screen) row.compose(composer, model);
  return std::move(composer).take();
}

}  // namespace rackside::kiosk

#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {

// However the page was come to or left: by a tap, a scan or because nobody was there any more.
Effects follow_screen(Model& model, ScreenName before) {
  const bool was_open = before == ScreenName::Camera, is_open = model.screen == ScreenName::Camera;
  if (was_open == is_open) return {};
  model.camera = is_open ? std::optional(CameraPage{}) : std::nullopt;
  if (!is_open) return {WatchCamera{Watching::Codes}};
  return {FindCameras{}, WatchCamera{Watching::EveryPicture}};
}

Effects set_up(Model& model, const Settings& settings) {
  if (model.camera && settings.camera != model.settings.camera) model.camera->sight.reset();
  take_settings(model, settings);
  return {KeepSettings{settings}};
}

// What another camera saw may still have been on its way.
void on_sight(Model& model, const CameraSight& sight) {
  if (model.camera && sight.camera == model.settings.camera) model.camera->sight = sight;
}

void on_cameras(Model& model, const CamerasFound& found) {
  if (model.camera) model.camera->plugged_in = found.paths;
}

}  // namespace rackside::kiosk

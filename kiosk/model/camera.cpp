#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {

// However the page was come to or left: by a tap, a scan or because nobody was there any more.
Effects follow_screen(Model& model, ScreenName before) {
  const auto live = [](ScreenName screen) {
    return screen == ScreenName::Camera || screen == ScreenName::Picture;
  };
  const bool was_open = live(before), is_open = live(model.screen);
  if (was_open == is_open) return {};
  model.camera = is_open ? std::optional(CameraPage{}) : std::nullopt;
  if (!is_open) return {WatchCamera{Watching::Codes}};
  if (model.screen == ScreenName::Picture) return {WatchCamera{Watching::EveryPicture}};
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

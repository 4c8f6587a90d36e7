#include "kiosk/view/camera_page_view.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "kiosk/frames/camera_choice.hpp"
#include "labels/reader/aim_box.hpp"

namespace rackside::kiosk {
namespace {

constexpr double move_step = 0.06;  // parts of the picture: some five taps from middle to edge
constexpr double size_step = 1.2;
constexpr double least_side = 0.2;  // of the height; a label that fills less is too far away anyway

std::string what_is_read(const CameraSight& sight) {
  std::string says = "It reads " + sight.code->grouped();
  if (sight.our_codes > 1)
    says += fmt::format(", of {} the one nearest to the aim", sight.our_codes);
  return says + ".";
}

std::string says(const Model& model) {
  const auto& sight = model.camera->sight;
  if (!sight)
    return model.settings.camera.empty() ? "No camera: codes come from a scanner or are typed."
                                         : "Waiting for the first picture.";
  if (!sight->trouble.empty()) return "No picture just now.";
  if (sight->code) return what_is_read(*sight);
  if (sight->guidance) return fmt::format("A label: {}.", guidance_words(*sight->guidance));
  if (!sight->read.empty()) return "A label that is not one of ours.";
  if (!sight->unread.empty()) return "A label, not read yet.";
  return "Hold a tub's label into the frame.";
}

SetupChoice source(const Model& model, const std::string& path) {
  Settings settings = model.settings;
  const bool chosen = settings.camera == path;
  settings.camera = path;
  return {source_word(path), SetUp{std::move(settings)}, chosen};
}

// The chosen camera stays in the list while it is away.
std::vector<SetupChoice> sources(const Model& model) {
  std::vector<std::string> paths{"", std::string(test_pattern_path)};
  std::ranges::copy(model.camera->plugged_in, std::back_inserter(paths));
  if (std::ranges::find(paths, model.settings.camera) == paths.end())
    paths.push_back(model.settings.camera);
  std::vector<SetupChoice> list;
  for (const std::string& path : paths) list.push_back(source(model, path));
  return list;
}

// From where the box really lies, so that no tap goes to waste beyond the edge of the picture.
Aim present_aim(const Model& model) {
  const auto& sight = model.camera->sight;
  const bool known = sight && sight->width > 0;
  return aim_inside(model.settings.aim, known ? sight->width : 4, known ? sight->height : 3);
}

AimKey aim_key(const Model& model, std::string word, const Aim& aim) {
  Settings settings = model.settings;
  settings.aim = aim;
  return {std::move(word), SetUp{std::move(settings)}};
}

std::vector<AimKey> aim_keys(const Model& model) {
  const Aim now = present_aim(model);
  const auto moved = [&](double x, double y) {
    return Aim{std::clamp(now.x + x * move_step, 0.0, 1.0),
               std::clamp(now.y + y * move_step, 0.0, 1.0), now.side};
  };
  const auto sized = [&](double by) {
    return Aim{now.x, now.y, std::clamp(now.side * by, least_side, 1.0)};
  };
  return {aim_key(model, "smaller", sized(1 / size_step)),
          aim_key(model, "up", moved(0, -1)),
          aim_key(model, "larger", sized(size_step)),
          aim_key(model, "left", moved(-1, 0)),
          aim_key(model, "middle", {0.5, 0.5, now.side}),
          aim_key(model, "right", moved(1, 0)),
          {"search", LookForCameras{}},
          aim_key(model, "down", moved(0, 1)),
          aim_key(model, "whole", Aim{})};
}

}  // namespace

CameraPageView view_camera(const Model& model) {
  if (!model.camera) return {};
  return {says(model), model.camera->sight ? model.camera->sight->trouble : std::string{},
          sources(model), aim_keys(model)};
}

std::string source_word(const std::string& path) {
  if (path.empty()) return "none";
  return path == test_pattern_path ? "test" : camera_label(path);
}

}  // namespace rackside::kiosk

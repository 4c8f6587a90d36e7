// A picture of what is wrong, beside the words.

#include "kiosk/screens/live_part.hpp"
#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"

namespace rackside::kiosk {
namespace {

std::string what_to_do(const Model& model) {
  const auto& sight = model.camera ? model.camera->sight : std::nullopt;
  if (sight && !sight->trouble.empty()) return sight->trouble;
  if (!sight || sight->picture == 0) return "Waiting for the camera ...";
  return "Hold the tub before the camera, closed.";
}

}  // namespace

void compose_picture(Composer& composer, const Model& model) {
  Box box = page(composer);
  const auto& sight = model.camera ? model.camera->sight : std::nullopt;
  const bool live = sight && sight->picture != 0 && sight->trouble.empty();
  const KeyRow take{"take the picture", TakePicture{}, Weight::First};
  const KeyRow without{"save without", LeavePicture{}};
  key_row(composer, box, live ? std::vector{take, without} : std::vector{without});
  const Style words = composer.style(Step::Instruction, Face::Bold);
  composer.paragraph(box, "A picture of what is wrong, for the keeper. " + what_to_do(model), words,
                     3);
  box.take_top(composer.mm(gap_mm));
  if (live) composer.live(picture_place(box, sight->width, sight->height), sight->picture);
}

}  // namespace rackside::kiosk

#include <algorithm>

#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

// Not come back to: a keypad whose code was opened, a question that was answered.
bool passing(ScreenName screen) {
  return screen == ScreenName::Keypad || screen == ScreenName::Number ||
         screen == ScreenName::Who || screen == ScreenName::Pin || screen == ScreenName::Days ||
         screen == ScreenName::Picture;
}

bool stands_on_plan(ScreenName screen) {
  return screen == ScreenName::Round || screen == ScreenName::Carry || screen == ScreenName::Find ||
         screen == ScreenName::Map;
}

void arrive(Model& model, ScreenName screen) {
  model.screen = screen;
  model.list_page = 0;
  model.list_turned = false;
  model.notice.reset();
  model.cover_page.ending = false;
  // The way home closes the tub: a card that is scanned later must not land in it.
  if (screen == ScreenName::Round) {
    model.trail.clear();
    model.tub.reset();
  }
  if (stands_on_plan(screen)) refresh_plan(model);
}

}  // namespace

void go_to(Model& model, ScreenName screen) {
  const auto been = std::ranges::find(model.trail, screen);
  if (been != model.trail.end())
    model.trail.erase(been, model.trail.end());
  else if (model.screen != screen && !passing(model.screen))
    model.trail.push_back(model.screen);
  arrive(model, screen);
}

// Whatever was half entered stays and is there again when one comes back.
void go_back(Model& model) {
  if (model.trail.empty()) return arrive(model, ScreenName::Round);
  const ScreenName screen = model.trail.back();
  model.trail.pop_back();
  arrive(model, screen);
}

void go_home(Model& model) { arrive(model, ScreenName::Round); }

}  // namespace rackside::kiosk

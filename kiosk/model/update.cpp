#include "kiosk/model/update.hpp"

#include "kiosk/model/deed_step.hpp"
#include "kiosk/model/news_step.hpp"
#include "kiosk/model/permission.hpp"
#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

struct Step : DeedStep, NewsStep {
  using DeedStep::operator();
  using NewsStep::operator();
};

}  // namespace

Effects decide(Model& model, const Intent& intent, const Stamp& stamp) {
  switch (permission(model, intent)) {
    case Verdict::Allowed: return std::visit(Step{{model, stamp}, {model, stamp}}, intent);
    case Verdict::AskWho: return ask_who(model, intent);
    case Verdict::AskPin: return ask_pin(model, intent);
    case Verdict::Refused: tell(model, Tone::Problem, refusal(model, intent)); return {};
  }
  return {};
}

Next update(Model model, const Intent& intent, const Stamp& stamp) {
  model.now = stamp.now;
  if (by_a_person(intent)) {
    note_presence(model, stamp);
    model.last_touched = stamp.now;
  }
  const ScreenName before = model.screen;
  Effects effects = decide(model, intent, stamp);
  for (Effect& effect : follow_screen(model, before)) effects.push_back(std::move(effect));
  // However the question about a picture was left, what is wrong is recorded.
  if (model.flagging && model.screen != ScreenName::Picture)
    for (Effect& effect : leave_picture(model)) effects.push_back(std::move(effect));
  if (!asks_first(model.screen)) {
    // Nobody waits for an answer any more.
    model.pin.reset();
    model.wanted.reset();
    model.new_person.reset();
  }
  return {std::move(model), std::move(effects)};
}

Next begin(std::string by, Moment now, Settings settings) {
  Model model;
  model.by = std::move(by);
  model.now = now;
  take_settings(model, std::move(settings));
  return {std::move(model), {FindPin{}, LoadRoster{}, LoadOverview{}}};
}

}  // namespace rackside::kiosk

// Something is wrong at a tub: whoever sees it says so in their own words.

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

bool blank(const std::string& words) {
  return std::ranges::all_of(words, [](char c) { return c == ' '; });
}

}  // namespace

std::optional<std::string> why_no_flag(const Model& model, const AskWrong& about,
                                       const std::string& words) {
  if (blank(words)) return "A few words are needed, so that the keeper knows what to look for.";
  if (!about.tub || !model.tub || model.tub->code != *about.tub || !model.tub->animal)
    return "Scan the tub first. The words stay here until then.";
  return std::nullopt;
}

Effects flag(Model& model, const AskWrong& about, const std::string& words, const Stamp& stamp) {
  model.flagging = draft_now(model.by, stamp, Flagged{});
  model.flagging->animal = model.tub->animal;
  model.flagging->enclosure = about.tub;
  model.flagging->note = words;
  if (!model.camera_fitted) return leave_picture(model);
  go_to(model, ScreenName::Picture);
  return {};
}

Effects take_picture(Model& model) {
  if (!model.flagging) return {};
  Draft draft = *std::exchange(model.flagging, std::nullopt);
  model.saving.push_back(draft.id);
  go_back(model);
  return {SaveWithPicture{std::move(draft)}};
}

Effects leave_picture(Model& model) {
  if (!model.flagging) return {};
  Draft draft = *std::exchange(model.flagging, std::nullopt);
  model.saving.push_back(draft.id);
  if (model.screen == ScreenName::Picture) go_back(model);
  return {SaveDrafts{{std::move(draft)}}};
}

std::string flag_saved_words(const Model& model, const std::string& without) {
  const Contact* keeper = keeper_to_call(model.cover);
  const std::string whom =
      keeper == nullptr ? "them" : fmt::format("{}, {},", keeper->name, keeper->number);
  return fmt::format("Saved. {}{}The keeper will see it; call {} if it cannot wait.", without,
                     without.empty() ? "" : " ", whom);
}

Effects quit(Model& model) {
  Effects effects = leave_picture(model);
  effects.emplace_back(Quit{});
  return effects;
}

}  // namespace rackside::kiosk

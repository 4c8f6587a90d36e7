#include <algorithm>

#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

// Taken back and written anew, in one go: a correction that is half there would be worse than the
// mistake.
Effects put_right(Model& model, const Event& old, Draft better, const Stamp& stamp) {
  Draft back = draft_now(model.by, stamp, Retracted{old.id});
  back.animal = old.animal;
  back.enclosure = old.enclosure;
  better.id = stamp.next_fresh;
  better.by = model.by;
  model.saving = {back.id, better.id};
  model.tub->corrected = better.id;
  return {SaveDrafts{{std::move(back), std::move(better)}}};
}

const Event* may_correct(Model& model) {
  const Event* old = corrected_event(model);
  if (old == nullptr || !model.saving.empty()) return nullptr;
  const auto gone = taken_back(*model.tub->history);
  if (!gone.contains(old->id)) return old;
  tell(model, Tone::Tell, "This entry was taken back already.");
  return nullptr;
}

}  // namespace

const Event* corrected_event(const Model& model) {
  if (!model.tub || !model.tub->history || !model.tub->corrected) return nullptr;
  const auto found = std::ranges::find(*model.tub->history, *model.tub->corrected, &Event::id);
  return found == model.tub->history->end() ? nullptr : &*found;
}

void look_at(Model& model, EventId event) {
  if (!model.tub) return;
  model.tub->corrected = event;
  go_to(model, ScreenName::Correct);
}

Effects correct_to(Model& model, Action action, const Stamp& stamp) {
  const Event* old = may_correct(model);
  auto details = details_of(action);
  if (old == nullptr || !details || *details == old->details) return {};
  // What was offered stays what it was; only what became of it was wrong.
  if (const auto* before = std::get_if<Offered>(&old->details))
    if (auto* now = std::get_if<Offered>(&*details)) {
      const Outcome outcome = now->outcome;
      *now = *before;
      now->outcome = outcome;
    }
  Draft better = *old;
  better.details = std::move(*details);
  return put_right(model, *old, std::move(better), stamp);
}

Effects correct_day(Model& model, int later, const Stamp& stamp) {
  const Event* old = may_correct(model);
  if (old == nullptr) return {};
  Draft better = *old;
  better.when.moment.utc += std::chrono::days{later};
  if (better.when.moment.utc > stamp.now.utc) {
    tell(model, Tone::Tell, "That day has not come yet. Nothing was changed.");
    return {};
  }
  return put_right(model, *old, std::move(better), stamp);
}

}  // namespace rackside::kiosk

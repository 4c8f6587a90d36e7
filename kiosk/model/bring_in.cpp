#include <fmt/format.h>

#include <utility>

#include "core/words/sentences.hpp"
#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {

// A file that is being written goes on being written, whatever page is open.
Effects look_for_files(Model& model) {
  if (!model.bring_in.so_far) model.bring_in = {};
  model.bring_in.files.reset();
  return {FindFiles{}};
}

Effects look_into(Model& model, const std::string& path) {
  if (model.bring_in.so_far) return {};
  model.bring_in.chosen = path;
  model.bring_in.counts.reset();
  return {ReadFile{path}};
}

void on_looked_into(Model& model, const FileLookedInto& looked) {
  if (model.bring_in.chosen != looked.path) return;
  if (looked.counts) {
    model.bring_in.counts = *looked.counts;
    return;
  }
  model.bring_in.chosen.reset();
  const Error& error = looked.counts.error();
  tell(model, Tone::Problem,
       fmt::format("{}{}{} Nothing was taken over.", error.where, error.where.empty() ? "" : ": ",
                   error.sentence));
}

Effects bring_in(Model& model) {
  BringInPage& page = model.bring_in;
  if (page.so_far || !page.counts || page.counts->nothing_new()) return {};
  page.so_far = WrittenSoFar{};
  return {WriteFile{*page.chosen}};
}

Effects on_brought_in(Model& model, const BroughtIn& brought) {
  BringInPage& page = model.bring_in;
  const RecordCounts counts = page.counts.value_or(RecordCounts{});
  page.so_far.reset();
  page.unlabelled = brought.tubs;
  page.chosen.reset();
  page.counts.reset();
  const bool all = brought.so_far.written == brought.so_far.of;
  if (brought.problem)
    tell(model, Tone::Problem,
         fmt::format("{} {} of {} are in the log; bring the file in again and it goes on there.",
                     brought.problem->sentence, brought.so_far.written, brought.so_far.of));
  else if (all)
    tell(model, Tone::Done,
         fmt::format("Brought in: {}, {}, {}.", count_of(counts.animals, "animal"),
                     count_of(counts.tubs, "new tub"), count_of(counts.events, "record")));
  else
    tell(model, Tone::Done,
         fmt::format("Stopped: {} of {} are in the log. Bring the file in again and it goes on "
                     "there.",
                     brought.so_far.written, brought.so_far.of));
  if (brought.so_far.written == 0) return {};
  return {LoadRoster{}, LoadOverview{}};
}

Effects print_brought_in(Model& model) {
  auto tubs = std::exchange(model.bring_in.unlabelled, {});
  std::erase_if(tubs, [&](const Code& tub) { return model.collection.enclosure(tub) == nullptr; });
  if (tubs.empty()) return {};
  tell(model, Tone::Tell,
       fmt::format("Labels for {} are being made ...",
                   count_of(static_cast<std::int64_t>(tubs.size()), "tub")));
  return {PrintLabels{std::move(tubs), model.settings, model.by}};
}

}  // namespace rackside::kiosk

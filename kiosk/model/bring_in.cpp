#include <fmt/format.h>

#include <utility>

#include "core/words/sentences.hpp"
#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {

std::string new_here_words(const RecordCounts& counts) {
  std::string words;
  for (const auto& [number, one] :
       {std::pair{counts.animals, "animal"}, {counts.tubs, "tub"}, {counts.events, "record"}})
    if (number > 0) words += (words.empty() ? "" : ", ") + count_of(number, one);
  return words;
}

// A file that is being written goes on being written, whatever page is open.
Effects look_for_files(Model& model) {
  if (!model.bring_in.so_far) model.bring_in = {};
  model.bring_in.files.reset();
  return {FindFiles{}};
}

Effects look_into(Model& model, const RecordFile& file) {
  if (model.bring_in.so_far) return {};
  model.bring_in.chosen = file;
  model.bring_in.counts.reset();
  return {ReadFile{file.path}};
}

void on_looked_into(Model& model, const FileLookedInto& looked) {
  const auto& chosen = model.bring_in.chosen;
  if (!chosen || chosen->path != looked.path) return;
  if (looked.counts) {
    model.bring_in.counts = *looked.counts;
    return;
  }
  model.bring_in.chosen.reset();
  tell(model, Tone::Problem, held_up_words(looked.counts.error(), {}));
}

Effects bring_in(Model& model) {
  BringInPage& page = model.bring_in;
  if (page.so_far || !page.counts || page.counts->nothing_new()) return {};
  page.so_far = WrittenSoFar{};
  return {WriteFile{page.chosen->path}};
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
    tell(model, Tone::Problem, held_up_words(*brought.problem, brought.so_far));
  else if (all)
    tell(model, Tone::Done, fmt::format("Brought in: {}.", new_here_words(counts)));
  else
    tell(model, Tone::Done, fmt::format("Stopped. {}", so_far_words(brought.so_far)));
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

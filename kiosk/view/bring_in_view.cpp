#include "kiosk/view/bring_in_view.hpp"

#include <fmt/format.h>

#include "core/words/sentences.hpp"

namespace rackside::kiosk {
namespace {

std::string counts_words(const std::string& name, const RecordCounts& counts) {
  const std::string known =
      counts.known == 0 ? "" : fmt::format(" {} of its rows are in the log already.", counts.known);
  if (counts.nothing_new()) return fmt::format("There is nothing new in {}.{}", name, known);
  return fmt::format("New in {}: {}.{}", name, new_here_words(counts), known);
}

std::string choice_words(const BringInPage& page) {
  if (!page.files) return "Looking for files ...";
  if (page.files->empty())
    return "No CSV file was found. Put animals.csv, and then events.csv, on a stick or into the "
           "folder bring-in beside the log, and look again.";
  return "Touch a file: every row of it is looked at first, the animals before their records.";
}

void offer(BringInView& view, std::string key, Intent intent) {
  view.key = std::move(key);
  view.intent = std::move(intent);
}

}  // namespace

BringInView view_bring_in(const Model& model) {
  const BringInPage& page = model.bring_in;
  BringInView view;
  if (page.so_far) {
    view.words = page.so_far->of == 0
                     ? "Writing ..."
                     : fmt::format("Writing: {} of {}. Everything else goes on meanwhile.",
                                   page.so_far->written, page.so_far->of);
    offer(view, "stop here", StopBringingIn{});
    return view;
  }
  if (page.files)
    for (const RecordFile& file : *page.files)
      view.files.push_back({file.name, file.folder, LookInto{file}});
  view.words = choice_words(page);
  if (page.chosen && page.counts) {
    view.words = counts_words(page.chosen->name, *page.counts);
    if (!page.counts->nothing_new()) return offer(view, "bring it in", BringIn{}), view;
  } else if (page.chosen) {
    view.words = "Looking at every row ...";
    return view;
  }
  if (!page.unlabelled.empty())
    offer(view,
          fmt::format("print {}",
                      count_of(static_cast<std::int64_t>(page.unlabelled.size()), "label")),
          PrintBroughtIn{});
  else
    offer(view, "look again", LookForFiles{});
  return view;
}

}  // namespace rackside::kiosk

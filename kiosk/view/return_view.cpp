#include <fmt/format.h>

#include <algorithm>

#include "core/collection/place.hpp"
#include "core/cover/cover_rules.hpp"
#include "core/words/sentences.hpp"
#include "kiosk/model/steps.hpp"
#include "kiosk/view/cover_view.hpp"

namespace rackside::kiosk {
namespace {

// How soon the keeper should read of it.
int rank(const TubReturn& tub) {
  if (tub.died || !tub.flags.empty()) return 0;
  if (tub.moulted || !tub.fed_against.empty()) return 1;
  return tub.count(Fate::NotDone) > 0 ? 2 : 3;
}

ToldPart tub_part(const TubReturn& tub, DateStyle dates) {
  const std::string place = format_place(tub.place);
  ToldPart part{
      place.empty() ? tub.name : place + ", " + tub.name, return_sentences(tub, dates), {}};
  if (tub.enclosure) part.touch = OpenTub{*tub.enclosure};
  return part;
}

void fill(ReturnView& view, const ReturnReport& report) {
  view.ready = true;
  std::vector<std::string>& in_short = view.parts.front().sentences;
  for (const std::string& sentence : return_summary(report)) in_short.push_back(sentence);
  std::vector<const TubReturn*> tubs;
  for (const TubReturn& tub : report.tubs) tubs.push_back(&tub);
  std::ranges::stable_sort(tubs, {}, [](const TubReturn* tub) { return rank(*tub); });
  int as_planned = 0;
  for (const TubReturn* tub : tubs) {
    ToldPart part = tub_part(*tub, report.wording.dates);
    if (part.sentences.empty())
      ++as_planned;
    else
      view.parts.push_back(std::move(part));
  }
  if (as_planned > 0)
    view.parts.front().sentences.push_back(
        fmt::format("As planned: {}.", count_of(as_planned, "tub")));
}

}  // namespace

ReturnView view_return(const Model& model) {
  const ReturnPage& page = model.return_page;
  ReturnView view{.more = covers_begun(model).size() > 1, .printing = page.printing};
  const Cover* cover = page.shown ? model.cover.cover(*page.shown) : nullptr;
  if (cover == nullptr) {
    view.parts.push_back({"Nobody has stood in yet", {}, {}});
    return view;
  }
  const bool holds = cover->holds_on(model.now.day());
  view.parts.push_back({fmt::format("{} {} in", cover->who, holds ? "stands" : "stood"),
                        {as_line(cover_words(*cover, model.settings.wording.dates))},
                        {}});
  if (page.report)
    fill(view, *page.report);
  else if (page.reading)
    view.parts.push_back(
        {"Going through the records ...",
         {fmt::format("About {:.0f} % done. What was due is asked again for "
                      "every day and every tub; everything else goes on meanwhile.",
                      100 * page.worked)},
         {}});
  return view;
}

}  // namespace rackside::kiosk

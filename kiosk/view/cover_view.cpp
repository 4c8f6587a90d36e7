#include "kiosk/view/cover_view.hpp"

#include <fmt/format.h>

#include "core/collection/place.hpp"
#include "core/cover/cover_rules.hpp"
#include "core/words/dates.hpp"
#include "core/words/sentences.hpp"
#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

ToldPart house_part(const Supplies& supplies) {
  ToldPart part{"To have in the house", {}, {}};
  for (const PreySupply& prey : supplies.prey)
    part.sentences.push_back(format_supply(prey, supplies.wording.units));
  if (supplies.prey.empty()) part.sentences.emplace_back("No meal falls on these days.");
  part.sentences.emplace_back("Feeder insects die in their box: get what you usually lose on top.");
  if (supplies.without_water > 0)
    part.sentences.push_back(
        fmt::format("Water was never written down for {}: they look at the dishes.",
                    count_of(supplies.without_water, "tub")));
  return part;
}

ToldPart days_part(const Supplies& supplies) {
  ToldPart part{fmt::format("Day by day, of {}", count_of(supplies.tubs, "tub")), {}, {}};
  for (const DayLoad& day : supplies.days) {
    const std::string name = weekday_words(day.day, supplies.wording.dates);
    part.sentences.push_back(day.visits == 0
                                 ? name + ": no tub needs anything."
                                 : fmt::format("{}: {} to go to, {}, {} to mist and fill.", name,
                                               count_of(day.visits, "tub"),
                                               count_of(day.meals, "meal"), day.water));
  }
  return part;
}

ToldPart sheet_part(const Model& model) {
  const std::string& printer = model.settings.printer;
  return {"The sheet for the wall",
          {printer.empty() ? std::string("It is written into a file beside the log.")
                           : fmt::format("It goes to the printer {}: put plain paper in. A roll of "
                                         "labels is too narrow; then it becomes a file.",
                                         printer)},
          {}};
}

void add_moults(std::vector<ToldPart>& parts, const CoverBrief& brief) {
  for (const TubRemark& moult : brief.moults)
    parts.push_back({fmt::format("{}{}{}", format_place(moult.place),
                                 format_place(moult.place).empty() ? "" : ", ", moult.name),
                     {moult.sentence},
                     {}});
}

std::string end_word(const Cover& cover, Day today, bool asked) {
  if (asked) return "yes, end";
  return today < cover.from ? "call off" : "end it";
}

void fill(CoverView& view, const Model& model, const Cover& cover) {
  const CoverPage& page = model.cover_page;
  view.shown = true;
  view.parts.push_back(
      {cover.who + " stands in", {as_line(cover_words(cover, model.settings.wording.dates))}, {}});
  view.end_word = end_word(cover, model.now.day(), page.ending);
  if (page.brief) {
    view.parts.push_back(house_part(page.brief->supplies));
    view.parts.push_back(days_part(page.brief->supplies));
    add_moults(view.parts, *page.brief);
  } else if (page.reading) {
    view.parts.push_back({"Working out the days to come ...",
                          {fmt::format("About {:.0f} % done. Every tub is gone through for every "
                                       "day; everything else goes on meanwhile.",
                                       100 * page.worked)},
                          {}});
  }
  view.parts.push_back(sheet_part(model));
}

}  // namespace

CoverView view_cover(const Model& model) {
  const CoverPage& page = model.cover_page;
  CoverView view{.more = covers_ahead(model).size() > 1,
                 .report = !covers_begun(model).empty(),
                 .printing = page.printing};
  if (const Cover* cover = page.shown ? model.cover.cover(*page.shown) : nullptr) {
    fill(view, model, *cover);
    return view;
  }
  view.parts.push_back(
      {"Nobody stands in",
       {"Going away? Plan who stands in and when. Their badge then opens the kiosk on these days "
        "and on no others, and they find one thing to do at each tub. You see here what has to be "
        "in the "
        "house, and print the sheet for the wall.",
        "A vet to call, and a note about one rack or tub: rackside-log cover contact, and cover "
        "note."},
       {}});
  return view;
}

}  // namespace rackside::kiosk

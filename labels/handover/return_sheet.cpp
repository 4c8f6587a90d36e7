#include "labels/handover/return_sheet.hpp"

#include <fmt/format.h>

#include "core/cover/cover_plan.hpp"
#include "core/cover/cover_rules.hpp"
#include "core/words/sentences.hpp"
#include "labels/handover/tub_names.hpp"

namespace rackside {
namespace {

void write_rack(FlowWriter& page, const RackPart<TubReturn>& part, DateStyle dates) {
  page.heading(rack_on_paper(part.rack));
  int as_planned = 0;
  for (const TubReturn& tub : part.lines) {
    const auto said = return_sentences(tub, dates);
    if (said.empty()) {
      ++as_planned;
      continue;
    }
    page.text(flow_strong, tub_on_paper(tub.place, tub.enclosure, tub.name));
    for (const std::string& sentence : said) page.text(flow_line, sentence);
  }
  if (as_planned > 0) page.text(flow_strong, "As planned: " + count_of(as_planned, "tub") + ".");
}

}  // namespace

Flow return_sheet(const ReturnReport& report, double width, double height, Resolution resolution,
                  const TextRuler& ruler) {
  FlowWriter page(width, height, resolution, ruler);
  page.text(flow_title, report.cover.who + " stood in");
  page.text(flow_line, as_line(cover_words(report.cover, report.wording.dates)));
  page.heading("In short");
  for (const std::string& sentence : return_summary(report)) page.text(flow_line, sentence);
  for (const auto& part : by_rack(report.tubs)) write_rack(page, part, report.wording.dates);
  return page.finish(
      fmt::format("{} {}", report.cover.who, cover_words(report.cover, report.wording.dates)));
}

}  // namespace rackside

#include "labels/handover/handover_sheet.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "core/care/cautions.hpp"
#include "core/collection/place.hpp"
#include "core/cover/cover_rules.hpp"
#include "core/cover/supplies.hpp"
#include "core/words/dates.hpp"
#include "core/words/sentences.hpp"
#include "labels/handover/tub_names.hpp"

namespace rackside {
namespace {

constexpr double badge_room = 34;  // millimetres
constexpr double tub_room = 17;
constexpr FlowStyle number_style{Face::TextBold, 6.0, 0, 0.6, 8};

void write_front(FlowWriter& page, const CoverPlan& plan, const Code& badge) {
  page.text(flow_title, plan.cover.who + " stands in");
  page.text(flow_line,
            fmt::format("{} Made on {}.", as_line(cover_words(plan.cover, plan.wording.dates)),
                        long_day_words(plan.made.day(), plan.wording.dates)));
  page.codes({{badge, {"Scan this badge when you come.", badge.grouped()}}}, 2, badge_room);
}

void write_contacts(FlowWriter& page, const CoverPlan& plan) {
  page.heading("Whom to call");
  if (plan.contacts.empty()) page.text(flow_line, "Keeper: ____________________");
  for (const Contact& contact : plan.contacts) {
    page.text(number_style, fmt::format("{}: {}", contact.name, contact.number));
    page.text(flow_line, contact.when.empty() ? usual_reason_to_call(contact.kind) : contact.when);
  }
}

void write_sentences(FlowWriter& page, std::string_view title,
                     const std::vector<std::string>& sentences) {
  if (sentences.empty()) return;
  page.heading(title);
  for (const std::string& sentence : sentences) page.text(flow_line, sentence);
}

void write_keeper_says(FlowWriter& page, const CoverPlan& plan) {
  if (plan.notes.empty() && plan.tub_notes.empty()) return;
  page.heading("The keeper says");
  for (const NoteForCover& note : plan.notes)
    page.text(flow_line, note.rack.empty()
                             ? note.words
                             : fmt::format("{}: {}", rack_on_paper(note.rack), note.words));
  for (const TubRemark& note : plan.tub_notes) {
    page.text(flow_strong, fmt::format("{} · {}", rack_on_paper(note.place.rack),
                                       tub_on_paper(note.place, note.enclosure, note.name)));
    page.text(flow_line, note.sentence);
  }
}

void write_dangers(FlowWriter& page, const CoverPlan& plan) {
  for (const Danger& danger : plan.dangers) {
    std::string list;
    for (const std::string& species : danger.species) list += (list.empty() ? "" : ", ") + species;
    page.text(flow_strong, list);
    page.text(flow_line, danger.sentence);
  }
}

void write_moults(FlowWriter& page, const CoverPlan& plan) {
  if (plan.moults.empty()) return;
  page.heading("A moult may be met");
  for (const auto& part : by_rack(plan.moults)) {
    page.text(flow_rack, rack_on_paper(part.rack));
    for (const TubRemark& one : part.lines) {
      page.text(flow_strong, tub_on_paper(one.place, one.enclosure, one.name));
      page.text(flow_line, one.sentence);
    }
  }
}

std::string what_to_do(const CoverLine& line) {
  std::string words = line.words;
  for (const std::string& also : line.also) words += ' ' + also;
  return words;
}

std::vector<std::string> more_of(const CoverLine& line) {
  std::vector<std::string> more;
  std::string when = line.only.empty() ? std::string{} : fmt::format("Only {}.", line.only);
  if (!line.otherwise.empty())
    when += fmt::format("{}{}.", when.empty() ? "" : " ", line.otherwise);
  if (!when.empty()) more.push_back(std::move(when));
  if (line.caution) more.push_back("Careful: " + *line.caution);
  return more;
}

void write_visits(FlowWriter& page, const CoverDay& day) {
  for (const auto& part : by_rack(day.visits)) {
    page.text(flow_rack, fmt::format("{}: {}", rack_on_paper(part.rack),
                                     count_of(static_cast<int>(part.lines.size()), "tub")));
    for (const CoverLine& line : part.lines)
      page.task(tub_on_paper(line.place, line.enclosure, line.name), what_to_do(line),
                more_of(line));
  }
}

// All of a rack in one paragraph: nothing is done there.
void write_closed(FlowWriter& page, const CoverDay& day) {
  for (const auto& part : by_rack(day.keep_closed)) {
    std::string list;
    for (const CoverLine& line : part.lines) {
      const std::string where = format_place({"", line.place.shelf, line.place.position});
      const std::string code = line.enclosure ? line.enclosure->grouped() : line.name;
      list +=
          fmt::format("{}{}{}", list.empty() ? "" : "; ", where.empty() ? "" : where + " ", code);
    }
    page.text(flow_strong, fmt::format("Do not open in {}",
                                       part.rack.empty() ? "the room" : "rack " + part.rack));
    page.text(flow_small, list + ".");
  }
}

void write_day(FlowWriter& page, const CoverDay& day, DateStyle dates) {
  page.heading(long_day_words(day.day, dates));
  if (day.visits.empty()) page.text(flow_line, "No tub needs anything today.");
  write_visits(page, day);
  write_closed(page, day);
}

void write_supplies(FlowWriter& page, const CoverPlan& plan, const Collection& collection) {
  const Supplies supplies = supplies_for(plan.days, collection, plan.margin, plan.wording);
  page.heading("In the house before it begins");
  for (const PreySupply& prey : supplies.prey)
    page.text(flow_line, format_supply(prey, plan.wording.units));
  int water = 0;
  for (const DayLoad& day : supplies.days) water += day.water;
  page.text(flow_line, fmt::format("Water for {} to mist and fill, on {} days.",
                                   count_of(water, "visit"), supplies.days.size()));
  page.text(flow_small, "Feeder insects die in their box: get what you usually lose on top.");
}

void write_codes(FlowWriter& page, const CoverPlan& plan) {
  for (const auto& part : by_rack(plan.tubs)) {
    page.heading("Codes of " + (part.rack.empty() ? "tubs without a rack" : "rack " + part.rack));
    std::vector<FlowWriter::Cell> cells;
    for (const TubRemark& tub : part.lines)
      if (tub.enclosure)
        cells.push_back({*tub.enclosure,
                         {tub.enclosure->grouped(),
                          format_place({"", tub.place.shelf, tub.place.position}), tub.name}});
    page.codes(cells, 4, tub_room);
  }
}

}  // namespace

Flow handover_sheet(const CoverPlan& plan, const Collection& collection, const Code& badge,
                    double width, double height, Resolution resolution, const TextRuler& ruler) {
  FlowWriter page(width, height, resolution, ruler);
  write_front(page, plan, badge);
  write_contacts(page, plan);
  write_keeper_says(page, plan);
  write_sentences(page, "Before the first round", assistant_basics());
  write_sentences(page, "Where somebody can get hurt", general_cautions());
  write_dangers(page, plan);
  write_moults(page, plan);
  for (const CoverDay& day : plan.days) write_day(page, day, plan.wording.dates);
  write_supplies(page, plan, collection);
  write_codes(page, plan);
  return page.finish(
      fmt::format("{} {}", plan.cover.who, cover_words(plan.cover, plan.wording.dates)));
}

}  // namespace rackside

#include <fmt/format.h>

#include <iterator>

#include "core/collection/place.hpp"
#include "core/cover/cover_plan.hpp"
#include "core/cover/cover_rules.hpp"
#include "core/cover/return_report.hpp"
#include "core/words/dates.hpp"
#include "core/words/sentences.hpp"

namespace rackside {
namespace {

std::string list_of(const std::vector<Day>& days, DateStyle dates) {
  std::string list;
  for (const Day day : days) list += (list.empty() ? "" : ", ") + weekday_words(day, dates);
  return list;
}

std::string prey_words(const PreyUsed& prey, Units units) {
  return format_prey({.kind = prey.kind, .count = prey.count, .size = prey.size}, units);
}

void add_open_duties(std::vector<std::string>& said, const TubReturn& tub, DateStyle dates) {
  for (const DutyRecord& duty : tub.duties)
    if (duty.fate == Fate::NotDone || (duty.fate == Fate::Done && duty.days_late() > 0))
      said.push_back(duty_sentence(duty, dates));
}

}  // namespace

std::string duty_sentence(const DutyRecord& duty, DateStyle dates) {
  const std::string beginning =
      fmt::format("{}, due {}: ", task_words(duty.task), weekday_words(duty.due, dates));
  switch (duty.fate) {
    case Fate::NotDone: return beginning + "not done.";
    case Fate::FellAway:
      return beginning + fmt::format("no longer needed on {}.", weekday_words(duty.settled, dates));
    case Fate::Done: break;
  }
  if (duty.days_late() == 0) return beginning + "done.";
  return beginning + fmt::format("done {}, {} late.", weekday_words(duty.settled, dates),
                                 count_of(duty.days_late(), "day"));
}

std::vector<std::string> return_sentences(const TubReturn& tub, DateStyle dates) {
  std::vector<std::string> said;
  if (tub.died) said.push_back(fmt::format("Died on {}.", weekday_words(*tub.died, dates)));
  for (const FlagRecord& flag : tub.flags)
    said.push_back(fmt::format("Flagged on {}: {}{}", weekday_words(flag.day, dates),
                               as_line(flag.words),
                               flag.picture.empty() ? "" : " Picture: " + flag.picture));
  if (tub.moulted)
    said.push_back(fmt::format("Moulted: noticed on {}.", weekday_words(*tub.moulted, dates)));
  for (const Day day : tub.fed_against)
    said.push_back(
        fmt::format("Food was offered on {}, where none was to be.", weekday_words(day, dates)));
  if (tub.refused > 0) said.push_back(fmt::format("Refused {}.", count_of(tub.refused, "meal")));
  add_open_duties(said, tub, dates);
  if (!said.empty() && !tub.then.empty()) said.push_back(fmt::format("Before: {}.", tub.then));
  if (!said.empty() && !tub.now.empty()) said.push_back(fmt::format("Now: {}.", tub.now));
  return said;
}

std::vector<std::string> return_summary(const ReturnReport& report) {
  std::vector<std::string> said;
  said.push_back(fmt::format("{} done, {} of them late; {} not done; {} no longer needed.",
                             report.count(Fate::Done), report.late(), report.count(Fate::NotDone),
                             report.count(Fate::FellAway)));
  int refused = 0, moulted = 0, flagged = 0;
  for (const TubReturn& tub : report.tubs) {
    refused += tub.refused > 0 ? 1 : 0;
    moulted += tub.moulted ? 1 : 0;
    flagged += tub.flags.empty() ? 0 : 1;
  }
  said.push_back(fmt::format("{} of {} refused something, {} moulted, {} flagged.", refused,
                             count_of(static_cast<int>(report.tubs.size()), "tub"), moulted,
                             flagged));
  if (!report.silent_days.empty())
    said.push_back(fmt::format("Nothing was recorded on {}.",
                               list_of(report.silent_days, report.wording.dates)));
  std::string eaten;
  for (const PreyUsed& prey : report.prey)
    eaten += (eaten.empty() ? "" : ", ") + prey_words(prey, report.wording.units);
  said.push_back(eaten.empty() ? "Nothing was eaten." : fmt::format("Eaten: {}.", eaten));
  return said;
}

std::string return_as_text(const ReturnReport& report) {
  std::string text = fmt::format("{} stood in {}\n\n", report.cover.who,
                                 cover_words(report.cover, report.wording.dates));
  const auto out = std::back_inserter(text);
  for (const std::string& line : return_summary(report)) fmt::format_to(out, "  {}\n", line);
  for (const auto& part : by_rack(report.tubs)) {
    fmt::format_to(out, "\n{}\n", part.rack.empty() ? "Tubs without a rack" : "Rack " + part.rack);
    int as_planned = 0;
    for (const TubReturn& tub : part.lines) {
      const auto said = return_sentences(tub, report.wording.dates);
      if (said.empty()) {
        ++as_planned;
        continue;
      }
      fmt::format_to(out, "\n  {:<9}  {}, {}\n",
                     tub.enclosure ? tub.enclosure->grouped() : "no tub", tub.name,
                     format_place({"", tub.place.shelf, tub.place.position}));
      for (const std::string& line : said) fmt::format_to(out, "     {}\n", line);
    }
    if (as_planned > 0) fmt::format_to(out, "\n  As planned: {}.\n", count_of(as_planned, "tub"));
  }
  return text;
}

}  // namespace rackside

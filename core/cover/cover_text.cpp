#include <fmt/format.h>

#include <iterator>

#include "core/care/cautions.hpp"
#include "core/collection/place.hpp"
#include "core/cover/cover_rules.hpp"
#include "core/cover/supplies.hpp"
#include "core/words/dates.hpp"

namespace rackside {
namespace {

using Out = std::back_insert_iterator<std::string>;

std::string rack_title(std::string_view rack) {
  return rack.empty() ? "Tubs without a rack" : fmt::format("Rack {}", rack);
}

template <class Line>
std::string tub_words(const Line& line) {
  const std::string place = format_place({"", line.place.shelf, line.place.position});
  return fmt::format("{:<9}  {}{}{}", line.enclosure ? line.enclosure->grouped() : "no tub",
                     line.name, place.empty() ? "" : ", ", place);
}

void write_list(Out out, std::string_view title, const std::vector<std::string>& lines) {
  if (lines.empty()) return;
  fmt::format_to(out, "\n{}\n\n", title);
  for (const std::string& line : lines) fmt::format_to(out, "  {}\n", line);
}

void write_remarks(Out out, std::string_view title, const std::vector<TubRemark>& remarks) {
  if (remarks.empty()) return;
  fmt::format_to(out, "\n{}\n", title);
  for (const auto& part : by_rack(remarks)) {
    fmt::format_to(out, "\n {}\n", rack_title(part.rack));
    for (const TubRemark& one : part.lines)
      fmt::format_to(out, "  {}\n     {}\n", tub_words(one), one.sentence);
  }
}

void write_taps(Out out, const CoverLine& line) {
  if (line.duty != Duty::Do) return;
  std::string list;
  for (const Action tap : line.taps)
    list += fmt::format("{}{}", list.empty() ? "" : ", ", action_word(tap));
  fmt::format_to(out, "     Then tap one of: {}.\n", list);
}

void write_line(Out out, const CoverLine& line) {
  fmt::format_to(out, "  {}\n     {}\n", tub_words(line), line.words);
  for (const std::string& also : line.also) fmt::format_to(out, "     Also: {}\n", also);
  if (!line.only.empty()) fmt::format_to(out, "     Only {}.\n", line.only);
  write_taps(out, line);
  if (!line.otherwise.empty()) fmt::format_to(out, "     {}.\n", line.otherwise);
  if (line.caution) fmt::format_to(out, "     Careful: {}\n", *line.caution);
}

void write_lines(Out out, std::string_view title, const std::vector<CoverLine>& lines) {
  if (lines.empty()) return;
  for (const auto& part : by_rack(lines)) {
    fmt::format_to(out, "\n {}: {}\n", rack_title(part.rack), title);
    for (const CoverLine& line : part.lines) write_line(out, line);
  }
}

void write_dangers(Out out, const CoverPlan& plan) {
  for (const Danger& danger : plan.dangers) {
    std::string list;
    for (const std::string& species : danger.species) list += (list.empty() ? "" : ", ") + species;
    fmt::format_to(out, "\n  {}\n     {}\n", danger.sentence, list);
  }
}

void write_contacts(Out out, const CoverPlan& plan) {
  if (plan.contacts.empty()) return;
  fmt::format_to(out, "\nWhom to call\n\n");
  for (const Contact& contact : plan.contacts)
    fmt::format_to(out, "  {}: {}\n     {}\n", contact.name, contact.number,
                   contact.when.empty() ? usual_reason_to_call(contact.kind) : contact.when);
}

void write_notes(Out out, const CoverPlan& plan) {
  if (plan.notes.empty()) return;
  fmt::format_to(out, "\nThe keeper says\n\n");
  for (const NoteForCover& note : plan.notes)
    fmt::format_to(out, "  {}{}\n", note.rack.empty() ? "" : rack_title(note.rack) + ": ",
                   note.words);
}

}  // namespace

std::string cover_as_text(const CoverPlan& plan, const Collection& collection) {
  std::string text =
      fmt::format("{} stands in {}\n", plan.cover.who, cover_words(plan.cover, plan.wording.dates));
  const Out out(text);
  write_contacts(out, plan);
  write_notes(out, plan);
  write_list(out, "Before the first round", assistant_basics());
  write_list(out, "Where somebody can get hurt", general_cautions());
  write_dangers(out, plan);
  write_remarks(out, "The keeper's notes", plan.tub_notes);
  write_remarks(out, "A moult may be met", plan.moults);
  for (const CoverDay& day : plan.days) {
    fmt::format_to(out, "\n{}\n", long_day_words(day.day, plan.wording.dates));
    if (day.visits.empty()) fmt::format_to(out, "\n  No tub needs anything.\n");
    write_lines(out, "go there", day.visits);
    write_lines(out, "do not open", day.keep_closed);
  }
  fmt::format_to(out, "\n{}",
                 supplies_as_text(supplies_for(plan.days, collection, plan.margin, plan.wording)));
  return text;
}

}  // namespace rackside

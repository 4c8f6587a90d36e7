#include "core/round/plan_text.hpp"

#include <fmt/format.h>

#include <iterator>

#include "core/collection/place.hpp"

namespace rackside {
namespace {

using Out = std::back_insert_iterator<std::string>;

std::string name_of(const AnimalState& animal) {
  if (animal.key.empty()) return display_name(animal);
  return fmt::format("{} ({})", display_name(animal), animal.key);
}

void write_tub(Out out, const TubTask& tub, const Collection& collection) {
  const Instruction& said = tub.instruction;
  fmt::format_to(out, "  {:>3}  {:<9}  {}\n", tub.place.position,
                 tub.enclosure ? tub.enclosure->grouped() : "no tub",
                 name_of(*collection.animal(tub.animal)));
  fmt::format_to(out, "       {}.\n", tub.state);
  fmt::format_to(out, "       {}{}\n", said.urgent ? "URGENT: " : "", said.sentence);
  for (const Task task : said.also) fmt::format_to(out, "       Also: {}.\n", task_words(task));
  for (const std::string& why : said.why) fmt::format_to(out, "         - {}\n", why);
}

// Each caution of a shelf once, with the positions it is for.
void write_cautions(Out out, const ShelfPart& part) {
  std::map<std::string, std::string> positions;
  for (const TubTask& tub : part.tubs) {
    if (!tub.instruction.caution) continue;
    std::string& list = positions[*tub.instruction.caution];
    list += (list.empty() ? "" : ", ") + tub.place.position;
  }
  for (const auto& [caution, list] : positions)
    fmt::format_to(out, "  Careful{}{}: {}\n", list.empty() ? "" : " at ", list, caution);
}

void write_list(Out out, std::string_view title, std::span<const TubTask> tubs,
                const Collection& collection) {
  fmt::format_to(out, "\n{}: {}\n", title, tubs.size());
  for (const ShelfPart& part : by_shelf(tubs)) {
    const std::string shelf = format_place(part.shelf);
    fmt::format_to(out, "\n {}\n", shelf.empty() ? "no place on record" : shelf);
    write_cautions(out, part);
    for (const TubTask& tub : part.tubs) write_tub(out, tub, collection);
  }
}

void write_preparation(Out out, const Preparation& ready) {
  if (!ready.prey.empty() || !ready.carry.empty()) fmt::format_to(out, "\nBefore you start\n\n");
  for (const PreyNeeded& prey : ready.prey) fmt::format_to(out, "  {}\n", format_prey_needed(prey));
  for (const std::string& line : ready.carry) fmt::format_to(out, "  {}\n", line);
  for (const std::string& line : ready.cautions) fmt::format_to(out, "  {}\n", line);
}

}  // namespace

std::string plan_as_text(const DayPlan& plan, const Preparation& ready,
                         const Collection& collection) {
  std::string text = fmt::format("Plan for {}\n", format_day(plan.made.day()));
  const Out out(text);
  write_preparation(out, ready);
  if (!plan.notes.empty()) text += "\nThe room\n\n";
  for (const RackNote& note : plan.notes) fmt::format_to(out, "  {}\n", note.sentence);
  write_list(out, "Due", plan.due, collection);
  write_list(out, "Leave alone", plan.leave_alone, collection);
  write_list(out, "Wait", plan.wait, collection);
  return text;
}

}  // namespace rackside

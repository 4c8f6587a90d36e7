#include "core/program/cover_command.hpp"

#include <fmt/format.h>

#include <CLI/CLI.hpp>

#include "core/cover/cover_rules.hpp"
#include "core/event/words.hpp"
#include "core/overview/cover_reading.hpp"
#include "core/program/cover_words.hpp"
#include "core/store/sqlite_log.hpp"

namespace rackside::program {
namespace {

Result<int> show(const CoverWords& words, Desk& desk) {
  auto log = SqliteLog::open(desk.log, Access::Read);
  if (!log) return tl::unexpected(log.error());
  const Moment now = desk.clock.now();
  const auto read = read_cover_plan(**log, {words.who, {}}, now);
  if (!read) return tl::unexpected(read.error());
  fmt::print("{}", words.json ? cover_as_json(read->plan, read->overview.collection) + "\n"
                              : cover_as_text(read->plan, read->overview.collection));
  return done;
}

Result<int> list(const CoverWords&, Desk& desk) {
  auto log = SqliteLog::open(desk.log, Access::Read);
  if (!log) return tl::unexpected(log.error());
  auto events = (*log)->read_kinds(cover_kinds());
  if (!events) return tl::unexpected(events.error());
  const CoverBook book = fold_cover(*std::move(events));
  if (book.covers.empty()) fmt::print("No cover was planned yet.\n");
  for (const Cover& cover : book.covers)
    fmt::print("{} {}{}\n", cover.who, cover_words(cover),
               cover.last_day() < cover.from ? ": called off" : "");
  for (const Contact& contact : book.contacts)
    fmt::print("{}: {}, {}\n", word_of(contact.kind), contact.name, contact.number);
  for (const NoteForCover& note : book.notes)
    fmt::print("note{}{}: {}\n", note.tub ? " for tub " + note.tub->grouped() : "",
               note.rack.empty() ? "" : " for rack " + note.rack, note.words);
  return done;
}

using Work = Result<int> (*)(const CoverWords&, Desk&);
struct Choice {
  CLI::App* words;
  Work work;
};

CLI::App* add_plan(CLI::App& cover, CoverWords& words) {
  auto* plan = cover.add_subcommand("plan", "enter who stands in and when");
  plan->add_option("--who", words.who, "who stands in")->required();
  plan->add_option("--from", words.from, "the first day")->type_name("DATE")->required();
  plan->add_option("--to", words.to, "the last day")->type_name("DATE")->required();
  plan->add_option("--rack", words.racks, "only this rack; several may follow");
  return plan;
}

CLI::App* add_note(CLI::App& cover, CoverWords& words) {
  auto* note = cover.add_subcommand("note", "leave words for whoever stands in");
  note->add_option("words", words.note, "what to say")->required();
  auto* tub = note->add_option("--tub", words.tub, "about this tub: its code");
  note->add_option("--rack", words.rack, "about this rack")->excludes(tub);
  return note;
}

CLI::App* add_contact(CLI::App& cover, CoverWords& words) {
  auto* contact = cover.add_subcommand("contact", "enter whom to call");
  contact->add_option("kind", words.kind, "keeper, vet or emergency")->required();
  contact->add_option("name", words.name, "who")->required();
  contact->add_option("number", words.number, "how to reach them; none: no longer to be called");
  contact->add_option("--when", words.when, "when to call, in your words");
  return contact;
}

std::vector<Choice> add_choices(CLI::App& cover, CoverWords& words) {
  auto* show_words = cover.add_subcommand(
      "show", "print the plan of the cover that holds or comes next, day by day");
  show_words->add_option("--who", words.who, "of this person");
  show_words->add_flag("--json", words.json, "one JSON object instead of text");
  auto* end = cover.add_subcommand("end",
                                   "today is its last day; one that has not begun is "
                                   "called off");
  end->add_option("--who", words.who, "of this person");
  auto* unsay = cover.add_subcommand("unsay", "take a note back");
  unsay->add_option("words", words.note, "its words")->required();
  return {{add_plan(cover, words), plan_new_cover},
          {show_words, show},
          {cover.add_subcommand("list", "print covers, contacts and notes"), list},
          {add_note(cover, words), add_cover_note},
          {unsay, take_back_note},
          {add_contact(cover, words), set_contact},
          {end, end_cover}};
}

}  // namespace

Command add_cover_command(CLI::App& parser) {
  const auto words = std::make_shared<CoverWords>();
  CLI::App* cover = parser.add_subcommand(
      "cover",
      "Somebody stands in while the keeper is away: plan it, leave notes, print what they do.");
  cover->require_subcommand(1);
  cover->add_option("--by", words->by, "who enters this");
  const auto choices = add_choices(*cover, *words);
  return {cover, [words, choices](Desk& desk) -> Result<int> {
            for (const Choice& choice : choices)
              if (choice.words->parsed()) return choice.work(*words, desk);
            return wrong_words;
          }};
}

}  // namespace rackside::program

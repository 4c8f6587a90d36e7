#include "core/program/cover_command.hpp"

#include <fmt/format.h>

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
  Vocabulary words;
  Work work;
};

Vocabulary add_plan(Vocabulary& cover, CoverWords& words) {
  auto plan = cover.subcommand("plan", "enter who stands in and when");
  plan.option("--who", words.who, "who stands in").required();
  plan.option("--from", words.from, "the first day").value_name("DATE").required();
  plan.option("--to", words.to, "the last day").value_name("DATE").required();
  plan.option("--rack", words.racks, "only this rack; several may follow");
  return plan;
}

Vocabulary add_note(Vocabulary& cover, CoverWords& words) {
  auto note = cover.subcommand("note", "leave words for whoever stands in");
  note.option("words", words.note, "what to say").required();
  const auto tub = note.option("--tub", words.tub, "about this tub: its code");
  note.option("--rack", words.rack, "about this rack").excludes(tub);
  return note;
}

Vocabulary add_contact(Vocabulary& cover, CoverWords& words) {
  auto contact = cover.subcommand("contact", "enter whom to call");
  contact.option("kind", words.kind, "keeper, vet or emergency").required();
  contact.option("name", words.name, "who").required();
  contact.option("number", words.number, "how to reach them; none: no longer to be called");
  contact.option("--when", words.when, "when to call, in your words");
  return contact;
}

std::vector<Choice> add_choices(Vocabulary& cover, CoverWords& words) {
  auto show_words =
      cover.subcommand("show", "print the plan of the cover that holds or comes next, day by day");
  show_words.option("--who", words.who, "of this person");
  show_words.flag("--json", words.json, "one JSON object instead of text");
  auto end = cover.subcommand("end",
                              "today is its last day; one that has not begun is "
                              "called off");
  end.option("--who", words.who, "of this person");
  auto unsay = cover.subcommand("unsay", "take a note back");
  unsay.option("words", words.note, "its words").required();
  return {{add_plan(cover, words), plan_new_cover},
          {show_words, show},
          {cover.subcommand("list", "print covers, contacts and notes"), list},
          {add_note(cover, words), add_cover_note},
          {unsay, take_back_note},
          {add_contact(cover, words), set_contact},
          {end, end_cover}};
}

}  // namespace

Command add_cover_command(Vocabulary& parser) {
  const auto words = std::make_shared<CoverWords>();
  Vocabulary cover = parser.subcommand(
      "cover",
      "Somebody stands in while the keeper is away: plan it, leave notes, print what they do.");
  cover.require_subcommand();
  cover.option("--by", words->by, "who enters this");
  const auto choices = add_choices(cover, *words);
  return {cover, [words, choices](Desk& desk) -> Result<int> {
            for (const Choice& choice : choices)
              if (choice.words.was_chosen()) return choice.work(*words, desk);
            return wrong_words;
          }};
}

}  // namespace rackside::program

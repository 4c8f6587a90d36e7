// What `rackside-log cover` writes into the log.

#include <fmt/format.h>

#include <algorithm>

#include "core/collection/collection.hpp"
#include "core/cover/cover_access.hpp"
#include "core/cover/cover_rules.hpp"
#include "core/event/words.hpp"
#include "core/people/people.hpp"
#include "core/program/cover_words.hpp"
#include "core/store/sqlite_log.hpp"
#include "core/words/dates.hpp"

namespace rackside::program {
namespace {

Result<CoverBook> book_of(LogStore& log) {
  return log.read_kinds(cover_kinds()).map([](std::vector<Event> events) {
    return fold_cover(std::move(events));
  });
}

Draft draft_of(const CoverWords& words, Desk& desk, Details details, std::string note = {}) {
  return Draft{.id = desk.ids.next_event(),
               .by = words.by,
               .when = When{desk.clock.now(), Precision::Exact},
               .animal = {},
               .enclosure = {},
               .details = std::move(details),
               .note = std::move(note)};
}

Result<int> write(LogStore& log, Desk& desk, std::vector<Draft> drafts,
                  const std::string& sentence) {
  const auto written = log.append(std::move(drafts), desk.clock.now().utc);
  if (!written) return tl::unexpected(written.error());
  fmt::print("{}\n", sentence);
  return done;
}

Result<CoverPlanned> planned_by(const CoverWords& words) {
  const auto from = parse_day(words.from);
  if (!from) return tl::unexpected(from.error());
  const auto to = parse_day(words.to);
  if (!to) return tl::unexpected(to.error());
  return CoverPlanned{words.who, *from, *to, words.racks};
}

// Racks that no tub stands in are mostly slips of the pen.
Result<void> check_racks(LogStore& log, const std::vector<std::string>& racks) {
  auto roster = log.read_kinds(roster_kinds());
  if (!roster) return tl::unexpected(roster.error());
  const Collection collection = fold_collection(*std::move(roster));
  for (const std::string& rack : racks)
    if (std::ranges::none_of(collection.enclosures,
                             [&](const auto& tub) { return tub.second.place.rack == rack; }))
      return failure(ErrorKind::NotFound,
                     fmt::format("No tub stands in a rack \"{}\". Nothing was saved.", rack));
  return {};
}

Result<std::optional<Code>> tub_named(LogStore& log, const std::string& typed) {
  if (typed.empty()) return std::nullopt;
  const auto code = parse_typed_code(typed);
  if (!code) return tl::unexpected(code.error());
  auto roster = log.read_kinds(roster_kinds());
  if (!roster) return tl::unexpected(roster.error());
  if (fold_collection(*std::move(roster)).enclosure(*code) == nullptr)
    return failure(ErrorKind::NotFound, fmt::format("There is no tub {} in this log. Nothing was "
                                                    "saved.",
                                                    code->grouped()));
  return *code;
}

Result<People> people_of(LogStore& log) {
  return log.read_kinds(roster_kinds()).map([](std::vector<Event> events) {
    return fold_people(std::move(events));
  });
}

}  // namespace

Result<Cover> cover_asked_for(const CoverBook& book, const std::string& who, Day day) {
  if (const Cover* found = book.on_or_after(day, who)) return *found;
  return failure(ErrorKind::NotFound,
                 who.empty() ? "No cover is planned. \"rackside-log cover plan\" plans one."
                             : fmt::format("No cover of {} is planned.", who));
}

Result<int> plan_new_cover(const CoverWords& words, Desk& desk) {
  const auto planned = planned_by(words);
  if (!planned) return tl::unexpected(planned.error());
  auto log = SqliteLog::open(desk.log, Access::Write);
  if (!log) return tl::unexpected(log.error());
  const auto book = book_of(**log);
  if (!book) return tl::unexpected(book.error());
  if (auto can = check_cover(*book, *planned, desk.clock.now().day()); !can)
    return tl::unexpected(can.error());
  if (auto known = check_racks(**log, planned->racks); !known) return tl::unexpected(known.error());
  const Cover cover{{}, planned->who, planned->from, planned->to, planned->racks, {}};
  const auto people = people_of(**log);
  if (!people) return tl::unexpected(people.error());
  const auto access = access_for(*people, *planned, desk.clock.now().day());
  if (!access) return tl::unexpected(access.error());
  std::vector<Draft> drafts{draft_of(words, desk, *planned)};
  std::string sentence = fmt::format("Saved: {} stands in {}.", cover.who, cover_words(cover));
  if (*access) {
    drafts.push_back(draft_of(words, desk, **access));
    sentence += fmt::format(" Their badge opens the kiosk until {}.", long_day_words(planned->to));
  }
  return write(**log, desk, std::move(drafts), sentence);
}

Result<int> end_cover(const CoverWords& words, Desk& desk) {
  auto log = SqliteLog::open(desk.log, Access::Write);
  if (!log) return tl::unexpected(log.error());
  const auto book = book_of(**log);
  if (!book) return tl::unexpected(book.error());
  const Day today = desk.clock.now().day();
  const auto cover = cover_asked_for(*book, words.who, today);
  if (!cover) return tl::unexpected(cover.error());
  const std::string sentence =
      today < cover->from
          ? fmt::format("Saved: the cover of {} is called off.", cover->who)
          : fmt::format("Saved: {} stands in until {}.", cover->who, long_day_words(today));
  const auto people = people_of(**log);
  if (!people) return tl::unexpected(people.error());
  std::vector<Draft> drafts{draft_of(words, desk, CoverEnded{cover->id})};
  if (auto access = access_after(*people, *book, *cover, today))
    drafts.push_back(draft_of(words, desk, *std::move(access)));
  return write(**log, desk, std::move(drafts), sentence);
}

Result<int> add_cover_note(const CoverWords& words, Desk& desk) {
  auto log = SqliteLog::open(desk.log, Access::Write);
  if (!log) return tl::unexpected(log.error());
  const auto tub = tub_named(**log, words.tub);
  if (!tub) return tl::unexpected(tub.error());
  if (!words.rack.empty())
    if (auto known = check_racks(**log, {words.rack}); !known) return tl::unexpected(known.error());
  Draft draft = draft_of(words, desk, CoverNote{words.rack}, words.note);
  draft.enclosure = *tub;
  return write(**log, desk, {std::move(draft)},
               "Saved. It stands in the plan until it is taken back.");
}

Result<int> take_back_note(const CoverWords& words, Desk& desk) {
  auto log = SqliteLog::open(desk.log, Access::Write);
  if (!log) return tl::unexpected(log.error());
  const auto book = book_of(**log);
  if (!book) return tl::unexpected(book.error());
  const auto found = std::ranges::find(book->notes, words.note, &NoteForCover::words);
  if (found == book->notes.end())
    return failure(ErrorKind::NotFound,
                   "No note has these words; \"rackside-log cover list\" tells them. Nothing was "
                   "changed.");
  return write(**log, desk, {draft_of(words, desk, Retracted{found->id})}, "Taken back.");
}

Result<int> set_contact(const CoverWords& words, Desk& desk) {
  const auto kind = contact_kind_from_word(words.kind);
  if (!kind)
    return failure(ErrorKind::BadInput, "A contact is a keeper, a vet or an emergency number.");
  auto log = SqliteLog::open(desk.log, Access::Write);
  if (!log) return tl::unexpected(log.error());
  return write(**log, desk,
               {draft_of(words, desk, ContactSet{*kind, words.name, words.number}, words.when)},
               words.number.empty() ? fmt::format("{} is no longer to be called.", words.name)
                                    : fmt::format("Saved: {}, {}.", words.name, words.number));
}

}  // namespace rackside::program

#include "core/program/supplies_command.hpp"

#include <fmt/format.h>

#include "core/cover/cover_rules.hpp"
#include "core/cover/days.hpp"
#include "core/cover/supplies.hpp"
#include "core/overview/overview.hpp"
#include "core/store/sqlite_log.hpp"

namespace rackside::program {
namespace {

struct Words {
  int days = 14;
  std::string from;
  std::vector<std::string> racks;
  bool json = false;
};

Result<Cover> span_of(const Words& words, Day today) {
  const auto from = words.from.empty() ? Result<Day>(today) : parse_day(words.from);
  if (!from) return tl::unexpected(from.error());
  if (*from < today || *from > today + longest_cover)
    return failure(ErrorKind::BadInput,
                   fmt::format("{} cannot be foreseen: say a day from today to {} days from now.",
                               format_day(*from), longest_cover.count()));
  Cover span;
  span.from = *from;
  span.to = *from + std::chrono::days{words.days - 1};
  span.racks = words.racks;
  return span;
}

Result<int> tell_supplies(const Words& words, Desk& desk) {
  const Moment now = desk.clock.now();
  const auto span = span_of(words, now.day());
  if (!span) return tl::unexpected(span.error());
  auto log = SqliteLog::open(desk.log, Access::Read);
  if (!log) return tl::unexpected(log.error());
  Forecaster forecaster;
  const auto whole = read_overview(**log, forecaster, now, Until::AsOf);
  if (!whole) return tl::unexpected(whole.error());
  const Outlook outlook = forecaster.ahead(days_until(now, span->to));
  const KnownNow known{whole->collection, whole->rules, whole->climate, whole->cover, outlook};
  const Supplies supplies = supplies_for(foresee_days(known, span->from, &*span), whole->collection,
                                         whole->rules.collection.margin);
  fmt::print("{}", words.json ? supplies_as_json(supplies) + "\n" : supplies_as_text(supplies));
  return done;
}

}  // namespace

Command add_supplies_command(Vocabulary& parser) {
  const auto words = std::make_shared<Words>();
  Vocabulary command = parser.subcommand(
      "supplies",
      "Print what has to be in the house for the next days: prey by kind and size, and how many "
      "tubs are fed and watered on each.");
  command.option("--days", words->days, "for so many days")
      .within(1, static_cast<int>(longest_cover.count()))
      .shows_default();
  command.option("--from", words->from, "the first of them (default: today)").value_name("DATE");
  command.option("--rack", words->racks, "only this rack; several may follow");
  command.flag("--json", words->json, "one JSON object instead of text");
  return {command, [words](Desk& desk) { return tell_supplies(*words, desk); }};
}

}  // namespace rackside::program

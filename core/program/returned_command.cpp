#include "core/program/returned_command.hpp"

#include <fmt/format.h>

#include "core/overview/return_reading.hpp"
#include "core/store/sqlite_log.hpp"

namespace rackside::program {
namespace {

struct Words {
  std::string who;
  bool json = false;
};

Result<int> returned(const Words& words, Desk& desk) {
  auto log = SqliteLog::open(desk.log, Access::Read);
  if (!log) return tl::unexpected(log.error());
  const auto read = read_return(**log, {words.who, {}}, desk.clock.now());
  if (!read) return tl::unexpected(read.error());
  fmt::print("{}", words.json ? return_as_json(read->report, read->overview.collection) + "\n"
                              : return_as_text(read->report));
  return done;
}

}  // namespace

Command add_returned_command(Vocabulary& parser) {
  const auto words = std::make_shared<Words>();
  Vocabulary command = parser.subcommand(
      "returned",
      "Print what was done and not done while somebody stood in, tub by tub, until the last day of "
      "the cover or today.");
  command.option("--who", words->who, "the cover of this person (default: the last one)");
  command.flag("--json", words->json, "one JSON object instead of text");
  return {command, [words](Desk& desk) { return returned(*words, desk); }};
}

}  // namespace rackside::program

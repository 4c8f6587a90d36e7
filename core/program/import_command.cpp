#include "core/program/import_command.hpp"

#include <fmt/format.h>

#include <thread>

#include "core/file/read_text.hpp"
#include "core/interchange/take_over.hpp"
#include "core/program/wording.hpp"
#include "core/store/sqlite_log.hpp"

namespace rackside::program {
namespace {

struct Words {
  std::string animals;
  std::string events;
};

struct Loaded {
  std::string text;  // what the source looks at
  std::optional<SourceFile> source;
};

Result<void> load(const std::string& path, Loaded& file) {
  if (path.empty()) return {};
  auto text = read_text(path);
  if (!text) return tl::unexpected(text.error());
  file.text = *std::move(text);
  file.source = SourceFile{path, file.text};
  return {};
}

void tell(const ImportPlan& plan) {
  fmt::print("Taken over: {}, {}, {}.\n", counted(plan.animals, "animal"),
             counted(plan.tubs, "new tub"), counted(plan.events, "event"));
  if (plan.animals_known + plan.events_known > 0)
    fmt::print("In the log already: {}, {}.\n", counted(plan.animals_known, "animal"),
               counted(plan.events_known, "event"));
}

Result<int> import_files(const Words& words, Desk& desk) {
  Loaded animals;
  Loaded events;
  if (auto read = load(words.animals, animals); !read) return tl::unexpected(read.error());
  if (auto read = load(words.events, events); !read) return tl::unexpected(read.error());
  auto log = SqliteLog::open(desk.log, Access::Write);
  if (!log) return tl::unexpected(log.error());
  const auto plan = plan_import(animals.source, events.source, **log, desk.clock, desk.ids);
  if (!plan) {
    Error error = plan.error();
    error.sentence = held_up_words(error, {});
    return tl::unexpected(error);
  }
  // A kiosk on the same log gets its turn between the parts.
  const auto pause = [](std::size_t) { std::this_thread::sleep_for(std::chrono::milliseconds{5}); };
  const auto written = take_over(*plan, **log, desk.clock, pause);
  if (!written) return tl::unexpected(written.error());
  tell(*plan);
  return done;
}

}  // namespace

Command add_import_command(Vocabulary& parser) {
  const auto words = std::make_shared<Words>();
  Vocabulary command = parser.subcommand(
      "import",
      "Take over records from CSV files. Every row is looked at first: with one bad row, nothing "
      "is taken over. Rows that are in the log already are passed over.");
  const auto animals = command.option("--animals", words->animals, "animals.csv: one row an animal")
                           .value_name("FILE");
  const auto events =
      command.option("--events", words->events, "events.csv: one row an event").value_name("FILE");
  command.require_any({animals, events});
  return {command, [words](Desk& desk) { return import_files(*words, desk); }};
}

}  // namespace rackside::program

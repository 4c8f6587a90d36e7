#include "core/program/export_command.hpp"

#include <fmt/format.h>

#include "core/interchange/export.hpp"
#include "core/program/text_file.hpp"
#include "core/program/wording.hpp"
#include "core/store/sqlite_log.hpp"

namespace rackside::program {
namespace {

struct Words {
  std::string animals;
  std::string events;
};

// Takes the text of a file that was asked for; swallows that of the other.
class Target {
 public:
  Result<void> open(const std::string& path) {
    if (path.empty()) return {};
    auto created = NewTextFile::create(path);
    if (!created) return tl::unexpected(created.error());
    file_.emplace(*std::move(created));
    return {};
  }
  void write(std::string_view text) {
    if (file_) file_->write(text);
  }
  Result<void> finish() { return file_ ? file_->finish() : Result<void>{}; }

 private:
  std::optional<NewTextFile> file_;
};

void tell(const ExportSummary& summary, const Words& words) {
  if (!words.animals.empty())
    fmt::print("{}: {}.\n", words.animals, counted(summary.animals, "animal"));
  if (words.events.empty()) return;
  fmt::print("{}: {}.\n", words.events, counted(summary.events, "event"));
  if (summary.left_out.empty()) return;
  std::string list;
  for (const auto& [kind, count] : summary.left_out)
    list += fmt::format("{}{} {}", list.empty() ? "" : ", ", count, kind);
  fmt::print("Left out, because the files have no row for it: {}.\n", list);
}

Result<int> export_files(const Words& words, Desk& desk) {
  auto log = SqliteLog::open(desk.log, Access::Read);
  if (!log) return tl::unexpected(log.error());
  Target animals;
  Target events;
  if (auto opened = animals.open(words.animals); !opened) return tl::unexpected(opened.error());
  if (auto opened = events.open(words.events); !opened) return tl::unexpected(opened.error());
  const auto summary = export_log(
      **log, [&](std::string_view text) { animals.write(text); },
      [&](std::string_view text) { events.write(text); });
  if (!summary) return tl::unexpected(summary.error());
  if (auto finished = animals.finish(); !finished) return tl::unexpected(finished.error());
  if (auto finished = events.finish(); !finished) return tl::unexpected(finished.error());
  tell(*summary, words);
  return done;
}

}  // namespace

Command add_export_command(Vocabulary& parser) {
  const auto words = std::make_shared<Words>();
  Vocabulary command = parser.subcommand(
      "export",
      "Write the records as CSV files, without what was taken back. Importing them into an empty "
      "log gives the same collection. A file of that name is replaced.");
  const auto animals =
      command.option("--animals", words->animals, "where to write animals.csv").value_name("FILE");
  const auto events =
      command.option("--events", words->events, "where to write events.csv").value_name("FILE");
  command.require_any({animals, events});
  return {command, [words](Desk& desk) { return export_files(*words, desk); }};
}

}  // namespace rackside::program

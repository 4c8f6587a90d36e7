#include "core/store/log_check.hpp"

#include <fmt/format.h>

#include "core/store/event_row.hpp"
#include "core/store/opening.hpp"
#include "core/store/sqlite_log.hpp"

namespace rackside {

using namespace store;

namespace {

class Checker {
 public:
  Checker(const Database& database, LogReport& report) : database_(database), report_(report) {}

  void file(CheckDepth depth) {
    Statement check = database_.prepare(
        depth == CheckDepth::Quick ? fmt::format("PRAGMA quick_check({})", most_findings)
                                   : fmt::format("PRAGMA integrity_check({})", most_findings));
    while (check.step())
      if (check.text(0) != "ok") found(fmt::format("The file is damaged: {}", check.text(0)));
  }

  void references() {
    Statement check = database_.prepare("PRAGMA foreign_key_check");
    while (check.step()) found(fmt::format("Row {} names a kiosk nobody knows.", check.integer(1)));
  }

  void events() {
    Statement select = database_.prepare(
        fmt::format("SELECT {}, position FROM events ORDER BY position", event_columns));
    while (select.step()) {
      ++report_.events;
      const std::int64_t position = select.integer(event_column_count);
      if (const auto event = read_event(select); !event)
        found(fmt::format("Event {} cannot be read: {}", position, event.error().sentence));
    }
  }

  // Numbers are unique for each kiosk, so as many as the largest means none is missing.
  void numbers() {
    Statement count = database_.prepare(
        "SELECT lower(hex(kiosk)), count(*), max(number) FROM events GROUP BY kiosk");
    for (; count.step(); ++report_.kiosks)
      if (count.integer(1) != count.integer(2))
        found(fmt::format("Of the {} events of kiosk {}, {} are missing.", count.integer(2),
                          count.text(0), count.integer(2) - count.integer(1)));
  }

  void indexes() {
    for (const auto& [index, condition] : {std::pair{"sqlite_autoindex_events_1", "1"},
                                           {"sqlite_autoindex_events_2", "1"},
                                           {"events_by_animal", "1"},
                                           {"events_by_enclosure", "enclosure IS NOT NULL"}}) {
      const auto rows = database_.integer(
          fmt::format("SELECT count(*) FROM events NOT INDEXED WHERE {}", condition));
      const auto entries = database_.integer(
          fmt::format("SELECT count(*) FROM events INDEXED BY {} WHERE {}", index, condition));
      if (rows != entries)
        found(fmt::format("The index {} has {} entries for {} events.", index, entries, rows));
    }
  }

 private:
  void found(std::string finding) {
    if (report_.findings.size() < most_findings) report_.findings.push_back(std::move(finding));
  }

  const Database& database_;
  LogReport& report_;
};

}  // namespace

Result<LogReport> check_log(const std::filesystem::path& log, CheckDepth depth) {
  return guarded([&] {
    const Database database = open_log_file(log, Access::Read, usual_patience);
    database.run("BEGIN");  // one snapshot for everything
    LogReport report;
    Checker checker(database, report);
    try {
      checker.file(depth);
      checker.references();
      checker.events();
      checker.numbers();
      checker.indexes();
    } catch (const StoreFailure& failed) {  // too damaged to go on looking
      report.findings.push_back(failed.error.sentence);
    }
    return report;
  });
}

}  // namespace rackside

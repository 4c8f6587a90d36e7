#include "core/store/opening.hpp"

#include <fmt/format.h>
#include <sqlite3.h>
#include <unistd.h>

#include <thread>

#include "core/clock/system_clock.hpp"
#include "core/clock/system_ids.hpp"
#include "core/store/schema.hpp"

namespace rackside::store {
namespace {

namespace fs = std::filesystem;

// Pages are 4 KiB: the side file is folded in at 8 MiB at the latest, and cut back to that.
constexpr const char* habits = R"(
PRAGMA foreign_keys = ON;
PRAGMA synchronous = FULL;
PRAGMA wal_autocheckpoint = 2048;
PRAGMA journal_size_limit = 8388608;
PRAGMA cache_size = -8192;
PRAGMA trusted_schema = OFF;
)";

// SQLite does not wait for others by itself when it changes to the write-ahead log.
void use_write_ahead_log(const Database& database, std::chrono::milliseconds patience) {
  const auto until = std::chrono::steady_clock::now() + patience;
  for (;;) {
    try {
      database.run("PRAGMA journal_mode = WAL");
      return;
    } catch (const StoreFailure& failed) {
      if (failed.error.kind != ErrorKind::Busy || std::chrono::steady_clock::now() > until) throw;
      std::this_thread::sleep_for(std::chrono::milliseconds{5});
    }
  }
}

KioskId new_kiosk() {
  SystemClock clock;
  return KioskId{SystemIds(clock).next()};
}

// SQLite takes a file of one byte for an empty one, and would write over somebody's note.
void refuse_one_byte(const fs::path& path) {
  std::error_code absent;
  if (fs::file_size(path, absent) == 1) throw StoreFailure(explain(SQLITE_NOTADB, path));
}

Database open_for_writing(const fs::path& path, std::chrono::milliseconds patience) {
  refuse_one_byte(path);
  Database database(path, path.string(), SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, patience);
  // SQLite opens what it may not write to for reading, without a word.
  if (database.read_only()) throw StoreFailure(explain(SQLITE_READONLY, path));
  database.run(habits);
  create_schema(database, new_kiosk());
  check_schema(database, Access::Write);
  use_write_ahead_log(database, patience);
  refresh_roster_index(database);
  return database;
}

// A file: address, in which these three characters would mean something.
std::string address_of(const fs::path& path, std::string_view query) {
  std::string address = "file:";
  for (const char c : path.string())
    if (c == '%' || c == '?' || c == '#')
      address += fmt::format("%{:02X}", static_cast<unsigned>(c));
    else
      address += c;
  return address.append(query);
}

// A log on a medium that cannot be written to has no room for SQLite's side files. Without any it
// is whole by itself, and nobody can be changing it.
bool stands_alone(const fs::path& path) {
  const fs::path folder = path.has_parent_path() ? path.parent_path() : fs::path(".");
  std::error_code ignored;
  return access(folder.c_str(), W_OK) != 0 && !fs::exists(path.string() + "-wal", ignored);
}

Database open_for_reading(const fs::path& path, std::chrono::milliseconds patience) {
  const auto query = stands_alone(path) ? "?immutable=1" : "";
  Database database(path, address_of(path, query), SQLITE_OPEN_READONLY | SQLITE_OPEN_URI,
                    patience);
  database.run("PRAGMA cache_size = -8192; PRAGMA trusted_schema = OFF");
  check_schema(database, Access::Read);
  return database;
}

}  // namespace

Database open_log_file(const fs::path& path, Access access, std::chrono::milliseconds patience) {
  switch (access) {
    case Access::Read: return open_for_reading(path, patience);
    case Access::Write: return open_for_writing(path, patience);
  }
  throw StoreFailure(explain(SQLITE_MISUSE, path));
}

KioskId kiosk_in(const Database& database) {
  Statement select = database.prepare("SELECT value FROM meta WHERE name = 'kiosk'");
  if (!select.step()) throw StoreFailure(explain(SQLITE_CORRUPT, database.path()));
  const auto id = parse_uuid(select.text(0));
  if (!id) throw StoreFailure(explain(SQLITE_CORRUPT, database.path()));
  return KioskId{*id};
}

}  // namespace rackside::store

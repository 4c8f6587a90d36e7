#pragma once

#include <sqlite3.h>

#include <cstdlib>
#include <filesystem>

namespace rackside::bench {

// The least that SQLite can do to keep one row: one table, no index, same settings.
class BareTable {
 public:
  explicit BareTable(const std::filesystem::path& path) {
    sqlite3_open(path.c_str(), &file_);
    run("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; CREATE TABLE row (content BLOB)");
    sqlite3_prepare_v2(file_, "INSERT INTO row VALUES (zeroblob(180))", -1, &insert_, nullptr);
  }
  ~BareTable() {
    sqlite3_finalize(insert_);
    sqlite3_close(file_);
  }
  BareTable(const BareTable&) = delete;
  BareTable& operator=(const BareTable&) = delete;
  void commit_one() {
    run("BEGIN IMMEDIATE");
    sqlite3_step(insert_);
    sqlite3_reset(insert_);
    run("COMMIT");
  }

 private:
  void run(const char* sql) {
    if (sqlite3_exec(file_, sql, nullptr, nullptr, nullptr) != SQLITE_OK) std::exit(1);
  }
  sqlite3* file_ = nullptr;
  sqlite3_stmt* insert_ = nullptr;
};

}  // namespace rackside::bench

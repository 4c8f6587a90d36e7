#include "core/store/database.hpp"

#include <sqlite3.h>

#include <string>

namespace rackside::store {

namespace {

[[noreturn]] void fail(int code, const std::filesystem::path& path) {
  throw StoreFailure(explain(code, path));
}

}  // namespace

void Statement::Finalize::operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }

void Statement::check(int code) const {
  if (code != SQLITE_OK) fail(code, *path_);
}

void Statement::bind(int parameter, std::int64_t value) {
  check(sqlite3_bind_int64(statement_.get(), parameter, value));
}

void Statement::bind(int parameter, std::string_view text) {
  // A null pointer would be bound as NULL, and an empty view may hold one.
  const char* data = text.empty() ? "" : text.data();
  check(sqlite3_bind_text64(statement_.get(), parameter, data, text.size(), SQLITE_STATIC,
                            SQLITE_UTF8));
}

void Statement::bind(int parameter, std::span<const std::uint8_t> bytes) {
  check(
      sqlite3_bind_blob64(statement_.get(), parameter, bytes.data(), bytes.size(), SQLITE_STATIC));
}

void Statement::bind_nothing(int parameter) {
  check(sqlite3_bind_null(statement_.get(), parameter));
}

bool Statement::step() {
  const int code = sqlite3_step(statement_.get());
  if (code == SQLITE_ROW) return true;
  if (code == SQLITE_DONE) return false;
  const int extended = sqlite3_extended_errcode(sqlite3_db_handle(statement_.get()));
  sqlite3_reset(statement_.get());
  fail(extended, *path_);
}

void Statement::run() {
  Rows rows(*this);
  while (rows.next()) {
  }
}

void Statement::reset() { sqlite3_reset(statement_.get()); }

std::int64_t Statement::integer(int column) const {
  return sqlite3_column_int64(statement_.get(), column);
}

std::string_view Statement::text(int column) const {
  const auto* data = sqlite3_column_text(statement_.get(), column);
  const int size = sqlite3_column_bytes(statement_.get(), column);
  return {reinterpret_cast<const char*>(data), static_cast<std::size_t>(size)};
}

std::span<const std::uint8_t> Statement::bytes(int column) const {
  const auto* data =
      static_cast<const std::uint8_t*>(sqlite3_column_blob(statement_.get(), column));
  return {data, static_cast<std::size_t>(sqlite3_column_bytes(statement_.get(), column))};
}

bool Statement::is_nothing(int column) const {
  return sqlite3_column_type(statement_.get(), column) == SQLITE_NULL;
}

void Database::Close::operator()(sqlite3* handle) const { sqlite3_close_v2(handle); }

Database::Database(const std::filesystem::path& path, const std::string& address, int flags,
                   std::chrono::milliseconds patience)
    : path_(std::make_unique<std::filesystem::path>(path)) {
  sqlite3* opened = nullptr;
  const int code = sqlite3_open_v2(address.c_str(), &opened,
                                   flags | SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_EXRESCODE, nullptr);
  handle_.reset(opened);  // also a failed opening leaves a handle to close
  check(code);
  check(sqlite3_busy_timeout(opened, static_cast<int>(patience.count())));
}

void Database::check(int code) const {
  if (code != SQLITE_OK) fail(code, *path_);
}

Statement Database::prepare(std::string_view sql) const {
  sqlite3_stmt* statement = nullptr;
  check(sqlite3_prepare_v3(handle_.get(), sql.data(), static_cast<int>(sql.size()),
                           SQLITE_PREPARE_PERSISTENT, &statement, nullptr));
  return {statement, path_.get()};
}

void Database::run(const std::string& sql) const {
  check(sqlite3_exec(handle_.get(), sql.c_str(), nullptr, nullptr, nullptr));
}

std::int64_t Database::integer(std::string_view sql) const {
  Statement statement = prepare(sql);
  return statement.step() ? statement.integer(0) : 0;
}

std::int64_t Database::changes() const { return sqlite3_changes64(handle_.get()); }

bool Database::read_only() const { return sqlite3_db_readonly(handle_.get(), "main") == 1; }

bool Database::in_transaction() const { return sqlite3_get_autocommit(handle_.get()) == 0; }

Transaction::Transaction(const Database& database) : database_(database) {
  database_.run("BEGIN IMMEDIATE");
}

Transaction::~Transaction() {
  // After some failures SQLite has rolled back by itself. Where this fails too, closing the file
  // takes the transaction back.
  if (database_.in_transaction())
    sqlite3_exec(database_.handle(), "ROLLBACK", nullptr, nullptr, nullptr);
}

void Transaction::commit() { database_.run("COMMIT"); }

}  // namespace rackside::store

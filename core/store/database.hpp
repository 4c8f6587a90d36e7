#pragma once
// Owners for SQLite's handles. Our own hundred lines instead of a wrapper library, because the
// extended result code must reach `explain` and nothing else of such a library would be used.

#include <chrono>
#include <cstdint>
#include <memory>
#include <span>
#include <string_view>

#include "core/store/failure.hpp"

struct sqlite3;
struct sqlite3_stmt;

namespace rackside::store {

/// A prepared statement. Parameters count from 1, columns from 0. Throws StoreFailure.
class Statement {
 public:
  Statement() = default;
  Statement(sqlite3_stmt* statement, const std::filesystem::path* path)
      : statement_(statement), path_(path) {}

  void bind(int parameter, std::int64_t value);
  /// The text must outlive the statement's run.
  void bind(int parameter, std::string_view text);
  void bind(int parameter, std::span<const std::uint8_t> bytes);
  void bind_nothing(int parameter);

  /// Whether there is a row to read.
  [[nodiscard]] bool step();
  /// Runs to the end and makes ready for the next run.
  void run();
  void reset();

  [[nodiscard]] std::int64_t integer(int column) const;
  /// Valid until the next step.
  [[nodiscard]] std::string_view text(int column) const;
  [[nodiscard]] std::span<const std::uint8_t> bytes(int column) const;
  [[nodiscard]] bool is_nothing(int column) const;

 private:
  struct Finalize {
    void operator()(sqlite3_stmt* statement) const;
  };
  void check(int code) const;

  std::unique_ptr<sqlite3_stmt, Finalize> statement_;
  const std::filesystem::path* path_ = nullptr;
};

/// Leaves a statement ready for its next run, however its scope ends.
class Rows {
 public:
  explicit Rows(Statement& statement) : statement_(statement) {}
  ~Rows() { statement_.reset(); }
  Rows(const Rows&) = delete;
  Rows& operator=(const Rows&) = delete;
  [[nodiscard]] bool next() { return statement_.step(); }

 private:
  Statement& statement_;
};

/// An open file. Throws StoreFailure.
class Database {
 public:
  /// `flags` are SQLite's for opening; `path` may be one of its file: addresses with
  /// SQLITE_OPEN_URI.
  Database(const std::filesystem::path& path, const std::string& address, int flags,
           std::chrono::milliseconds patience);

  [[nodiscard]] Statement prepare(std::string_view sql) const;
  /// Runs all statements of `sql`.
  void run(const std::string& sql) const;
  /// The first column of the first row, as SQLite turns it into a number.
  [[nodiscard]] std::int64_t integer(std::string_view sql) const;

  [[nodiscard]] std::int64_t changes() const;
  [[nodiscard]] bool read_only() const;
  [[nodiscard]] bool in_transaction() const;
  [[nodiscard]] sqlite3* handle() const { return handle_.get(); }
  [[nodiscard]] const std::filesystem::path& path() const { return *path_; }

 private:
  struct Close {
    void operator()(sqlite3* handle) const;
  };
  void check(int code) const;

  std::unique_ptr<std::filesystem::path> path_;  // statements keep its address
  std::unique_ptr<sqlite3, Close> handle_;
};

/// Holds the write lock from its making. What is not committed is taken back.
class Transaction {
 public:
  explicit Transaction(const Database& database);
  ~Transaction();
  Transaction(const Transaction&) = delete;
  Transaction& operator=(const Transaction&) = delete;
  /// When it returns, everything is on the disk.
  void commit();

 private:
  const Database& database_;
};

}  // namespace rackside::store

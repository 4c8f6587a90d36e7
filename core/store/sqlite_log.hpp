#pragma once
// The log in a SQLite file: the adapter of core/log/log_store.hpp.
//
// "Saved" means on the disk: write-ahead log, synchronous=FULL. Readers in other processes never
// hold up the writer and see the log as it stood when their reading began. One object belongs to
// one thread at a time; a worker opens its own.

#include <chrono>
#include <filesystem>
#include <memory>

#include "core/log/log_store.hpp"
#include "core/store/access.hpp"

namespace rackside {

/// How long a write waits for another process that is writing, before it gives back Busy.
inline constexpr std::chrono::milliseconds usual_patience{2000};

class SqliteLog : public LogStore {
 public:
  /// Errors: NotFound (no such folder, or no log to read), NotOurs (a file that is no log),
  /// NewerVersion, ReadOnly, Busy, Broken. Nothing is changed when it fails.
  [[nodiscard]] static Result<std::unique_ptr<SqliteLog>> open(
      const std::filesystem::path& path, Access access,
      std::chrono::milliseconds patience = usual_patience);

  ~SqliteLog() override;

  Result<std::vector<Event>> append(const std::vector<Draft>& drafts, Instant now) override;
  Result<MergeOutcome> merge(const std::vector<Event>& events) override;
  Result<void> read_all(const Visit& visit) override;
  Result<std::vector<Event>> read_animal(const AnimalId& animal) override;
  Result<std::vector<Event>> read_enclosure(const Code& enclosure) override;
  Result<std::vector<Event>> read_kinds(const std::vector<std::string_view>& kinds) override;
  Result<std::vector<Event>> read_written_after(std::int64_t& position, std::size_t most) override;
  KioskId kiosk() const override;

  /// Moves what was written lately from the side file into the log, without waiting for anybody.
  /// To be called when nobody is touching the kiosk: then no tap has to pay for it. It happens by
  /// itself when the side file reaches 8 MiB, so that one that is never called costs only time.
  Result<void> tidy() override;

 private:
  struct Parts;
  explicit SqliteLog(std::unique_ptr<Parts> parts);

  std::unique_ptr<Parts> parts_;
};

}  // namespace rackside

#include "core/store/backup.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <sqlite3.h>
#include <unistd.h>

#include <memory>

#include "core/store/opening.hpp"
#include "core/store/sqlite_log.hpp"

namespace rackside {

using namespace store;

namespace {

namespace fs = std::filesystem;

constexpr int pages_a_step = 512;  // 2 MiB

struct FinishBackup {
  void operator()(sqlite3_backup* backup) const { sqlite3_backup_finish(backup); }
};
using Backup = std::unique_ptr<sqlite3_backup, FinishBackup>;

double share_done(sqlite3_backup* backup) {
  const int all = sqlite3_backup_pagecount(backup);
  return all == 0 ? 1.0 : 1.0 - static_cast<double>(sqlite3_backup_remaining(backup)) / all;
}

BackupEnd copy_pages(const Database& from, const Database& to, const BackupProgress& progress) {
  const Backup backup(sqlite3_backup_init(to.handle(), "main", from.handle(), "main"));
  if (!backup) throw StoreFailure(explain(sqlite3_extended_errcode(to.handle()), to.path()));
  for (;;) {
    const int code = sqlite3_backup_step(backup.get(), pages_a_step);
    const bool go_on = progress(share_done(backup.get()));
    if (code == SQLITE_DONE) return BackupEnd::Finished;
    if (code != SQLITE_OK) throw StoreFailure(explain(code, to.path()));
    if (!go_on) return BackupEnd::Stopped;
  }
}

void read_back(const fs::path& copy) {
  const Database database = open_log_file(copy, Access::Read, usual_patience);
  Statement check = database.prepare("PRAGMA quick_check(1)");
  if (!check.step() || check.text(0) != "ok") throw StoreFailure(explain(SQLITE_CORRUPT, copy));
}

void sync(const fs::path& path, int flags) {
  const int file = ::open(path.c_str(), flags | O_CLOEXEC);
  const bool done = file >= 0 && fsync(file) == 0;
  if (file >= 0) close(file);
  if (!done) throw StoreFailure(explain(SQLITE_IOERR_FSYNC, path));
}

// Removes the unfinished copy unless it got its name.
class Unfinished {
 public:
  explicit Unfinished(fs::path path) : path_(std::move(path)) { remove(); }
  ~Unfinished() { remove(); }
  Unfinished(const Unfinished&) = delete;
  Unfinished& operator=(const Unfinished&) = delete;
  [[nodiscard]] const fs::path& path() const { return path_; }

 private:
  void remove() const {
    std::error_code ignored;
    for (const char* end : {"", "-wal", "-shm", "-journal"})
      fs::remove(path_.string() + end, ignored);
  }
  fs::path path_;
};

BackupEnd copy_to(const fs::path& copy, const fs::path& log, const BackupProgress& progress) {
  const Database from = open_log_file(log, Access::Read, usual_patience);
  // One snapshot for the whole copy: with steps that each take their own, every record made
  // meanwhile would start the copying over.
  from.run("BEGIN");
  [[maybe_unused]] const auto snapshot = from.integer("SELECT count(*) FROM meta");
  const Database to(copy, copy.string(), SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE,
                    usual_patience);
  to.run("PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF");  // synced as a whole, below
  return copy_pages(from, to, progress);
}

void give_name(const fs::path& copy, const fs::path& to) {
  // link, unlike rename, never takes the place of a file that came here meanwhile. Some file
  // systems of memory sticks cannot link.
  std::error_code problem;
  fs::create_hard_link(copy, to, problem);
  if (problem && !fs::exists(to)) fs::rename(copy, to, problem);
  if (problem) throw StoreFailure(explain(SQLITE_IOERR, to));
  sync(to.has_parent_path() ? to.parent_path() : ".", O_RDONLY | O_DIRECTORY);
}

}  // namespace

Result<BackupEnd> back_up(const fs::path& log, const fs::path& to, const BackupProgress& progress) {
  std::error_code ignored;
  if (fs::exists(to, ignored))
    return failure(ErrorKind::NotNow,
                   fmt::format("There is already a file {}. It was left as it is; name another "
                               "place for the backup.",
                               to.string()),
                   to.string());
  return guarded([&] {
    const Unfinished copy(to.string() + ".unfinished");
    if (copy_to(copy.path(), log, progress) == BackupEnd::Stopped) return BackupEnd::Stopped;
    sync(copy.path(), O_RDWR);
    read_back(copy.path());
    give_name(copy.path(), to);
    return BackupEnd::Finished;
  });
}

}  // namespace rackside

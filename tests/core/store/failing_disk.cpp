#include "tests/core/store/failing_disk.hpp"

#include <sqlite3.h>

#include <cassert>
#include <cstring>

namespace rackside::tests {
namespace {

struct Plan {
  int done = 0;
  int allowed = std::numeric_limits<int>::max();
  int code = SQLITE_OK;

  int next() { return ++done > allowed ? code : SQLITE_OK; }
};

Plan write_plan;
Plan sync_plan;

// SQLite gives us room for this and, behind it, for the real file.
struct File {
  sqlite3_file base;
  sqlite3_file* real;
};

sqlite3_file* real_of(sqlite3_file* file) { return reinterpret_cast<File*>(file)->real; }

int do_close(sqlite3_file* file) { return real_of(file)->pMethods->xClose(real_of(file)); }
int do_read(sqlite3_file* file, void* to, int amount, sqlite3_int64 at) {
  return real_of(file)->pMethods->xRead(real_of(file), to, amount, at);
}
int do_write(sqlite3_file* file, const void* from, int amount, sqlite3_int64 at) {
  if (const int code = write_plan.next(); code != SQLITE_OK) return code;
  return real_of(file)->pMethods->xWrite(real_of(file), from, amount, at);
}
int do_truncate(sqlite3_file* file, sqlite3_int64 size) {
  return real_of(file)->pMethods->xTruncate(real_of(file), size);
}
int do_sync(sqlite3_file* file, int flags) {
  if (const int code = sync_plan.next(); code != SQLITE_OK) return code;
  return real_of(file)->pMethods->xSync(real_of(file), flags);
}
int do_size(sqlite3_file* file, sqlite3_int64* size) {
  return real_of(file)->pMethods->xFileSize(real_of(file), size);
}
int do_lock(sqlite3_file* file, int how) {
  return real_of(file)->pMethods->xLock(real_of(file), how);
}
int do_unlock(sqlite3_file* file, int how) {
  return real_of(file)->pMethods->xUnlock(real_of(file), how);
}
int do_check_lock(sqlite3_file* file, int* held) {
  return real_of(file)->pMethods->xCheckReservedLock(real_of(file), held);
}
int do_control(sqlite3_file* file, int what, void* argument) {
  return real_of(file)->pMethods->xFileControl(real_of(file), what, argument);
}
int do_sector(sqlite3_file* file) { return real_of(file)->pMethods->xSectorSize(real_of(file)); }
int do_traits(sqlite3_file* file) {
  return real_of(file)->pMethods->xDeviceCharacteristics(real_of(file));
}
int do_shm_map(sqlite3_file* file, int page, int size, int extend, void volatile** to) {
  return real_of(file)->pMethods->xShmMap(real_of(file), page, size, extend, to);
}
int do_shm_lock(sqlite3_file* file, int offset, int n, int flags) {
  return real_of(file)->pMethods->xShmLock(real_of(file), offset, n, flags);
}
void do_shm_barrier(sqlite3_file* file) { real_of(file)->pMethods->xShmBarrier(real_of(file)); }
int do_shm_unmap(sqlite3_file* file, int erase) {
  return real_of(file)->pMethods->xShmUnmap(real_of(file), erase);
}

const sqlite3_io_methods methods{
    2,           do_close,       do_read,       do_write,   do_truncate, do_sync,   do_size,
    do_lock,     do_unlock,      do_check_lock, do_control, do_sector,   do_traits, do_shm_map,
    do_shm_lock, do_shm_barrier, do_shm_unmap,  nullptr,    nullptr};

sqlite3_vfs* real_vfs = nullptr;
sqlite3_vfs failing_vfs;

int do_open(sqlite3_vfs*, sqlite3_filename name, sqlite3_file* base, int flags, int* out) {
  auto* file = reinterpret_cast<File*>(base);
  file->real = reinterpret_cast<sqlite3_file*>(file + 1);
  const int code = real_vfs->xOpen(real_vfs, name, file->real, flags, out);
  base->pMethods = file->real->pMethods != nullptr ? &methods : nullptr;
  return code;
}

}  // namespace

FailingDisk::FailingDisk() {
  heal();
  real_vfs = sqlite3_vfs_find("unix");
  assert(real_vfs != nullptr);
  failing_vfs = *real_vfs;
  failing_vfs.zName = "failing disk";
  failing_vfs.szOsFile = static_cast<int>(sizeof(File)) + real_vfs->szOsFile;
  failing_vfs.xOpen = do_open;
  sqlite3_vfs_register(&failing_vfs, 1);
}

FailingDisk::~FailingDisk() {
  heal();
  sqlite3_vfs_unregister(&failing_vfs);
  sqlite3_vfs_register(real_vfs, 1);
}

void FailingDisk::fail_writes_after(int more, int code) { write_plan = {0, more, code}; }
void FailingDisk::fail_syncs_after(int more, int code) { sync_plan = {0, more, code}; }
void FailingDisk::heal() { write_plan = sync_plan = {}; }
int FailingDisk::writes() const { return write_plan.done; }
int FailingDisk::syncs() const { return sync_plan.done; }

}  // namespace rackside::tests

#pragma once
// A disk that fails when it is told to: a layer under SQLite that passes everything on to the real
// file system until then.

#include <limits>

namespace rackside::tests {

/// While one exists, every database opened goes through it.
class FailingDisk {
 public:
  FailingDisk();
  ~FailingDisk();
  FailingDisk(const FailingDisk&) = delete;
  FailingDisk& operator=(const FailingDisk&) = delete;

  /// After `more` further writes each one gives back the SQLite code `code`.
  void fail_writes_after(int more, int code);
  /// After `more` further syncs each one gives back `code`.
  void fail_syncs_after(int more, int code);
  void heal();
  /// How many writes and syncs there have been since the last heal.
  [[nodiscard]] int writes() const;
  [[nodiscard]] int syncs() const;
};

}  // namespace rackside::tests

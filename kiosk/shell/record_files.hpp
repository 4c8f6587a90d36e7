#pragma once
// Where CSV files with records can lie.

#include <filesystem>
#include <string>
#include <vector>

#include "kiosk/model/bring_in_page.hpp"

namespace rackside::kiosk {

class RecordFiles {
 public:
  /// Files are looked for in the folder bring-in beside `log`, and on sticks: in the folders of
  /// `mounts`, two folders deep.
  explicit RecordFiles(const std::filesystem::path& log,
                       std::vector<std::filesystem::path> mounts = {"/media", "/run/media",
                                                                    "/mnt"});
  /// The latest first, at most a hundred.
  [[nodiscard]] std::vector<RecordFile> find() const;

 private:
  std::filesystem::path beside_log_;
  std::vector<std::filesystem::path> mounts_;
};

}  // namespace rackside::kiosk

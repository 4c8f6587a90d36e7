#include "kiosk/shell/record_files.hpp"

#include <algorithm>
#include <system_error>

#include "kiosk/model/lower_case.hpp"

namespace rackside::kiosk {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t most_files = 100;
constexpr int folders_deep = 2;  // /media/keeper/STICK

struct Found {
  fs::path path;
  fs::file_time_type written;
};

bool is_csv(const fs::path& file) {
  // What other systems leave beside a file begins with a dot.
  return lower(file.extension().string()) == ".csv" && !file.filename().string().starts_with('.');
}

// A stick may be pulled out at any moment: what cannot be read is passed over.
void look(const fs::path& folder, int deeper, std::vector<Found>& found) {
  std::error_code problem;
  fs::directory_iterator entries(folder, fs::directory_options::skip_permission_denied, problem);
  for (const fs::directory_iterator end; !problem && entries != end; entries.increment(problem)) {
    std::error_code ignored;
    const fs::path& path = entries->path();
    if (entries->is_directory(ignored)) {
      if (deeper > 0 && !entries->is_symlink(ignored)) look(path, deeper - 1, found);
    } else if (is_csv(path) && entries->is_regular_file(ignored)) {
      found.push_back({path, entries->last_write_time(ignored)});
    }
  }
}

}  // namespace

RecordFiles::RecordFiles(const fs::path& log, std::vector<fs::path> mounts)
    : beside_log_(log.parent_path() / "bring-in"), mounts_(std::move(mounts)) {}

std::vector<RecordFile> RecordFiles::find() const {
  std::vector<Found> found;
  look(beside_log_, 0, found);
  for (const fs::path& mount : mounts_) look(mount, folders_deep, found);
  std::ranges::sort(found, [](const Found& a, const Found& b) {
    return a.written != b.written ? a.written > b.written : a.path < b.path;
  });
  if (found.size() > most_files) found.resize(most_files);
  std::vector<RecordFile> files;
  for (const Found& file : found)
    files.push_back({file.path.string(), file.path.filename().string(),
                     file.path.parent_path().filename().string()});
  return files;
}

}  // namespace rackside::kiosk

#include "core/store/default_path.hpp"

#include <fmt/format.h>
#include <pwd.h>
#include <unistd.h>

#include <cstdlib>
#include <optional>

namespace rackside {
namespace {

namespace fs = std::filesystem;

std::optional<fs::path> absolute_from(const char* value) {
  if (value == nullptr || !fs::path(value).is_absolute()) return std::nullopt;
  return fs::path(value);
}

std::optional<fs::path> home() {
  if (auto named = absolute_from(std::getenv("HOME"))) return named;
  const passwd* user = getpwuid(getuid());
  return user == nullptr ? std::nullopt : absolute_from(user->pw_dir);
}

std::optional<fs::path> data_folder() {
  if (auto named = absolute_from(std::getenv("XDG_DATA_HOME"))) return named;
  if (const auto folder = home()) return *folder / ".local" / "share";
  return std::nullopt;
}

}  // namespace

Result<fs::path> default_log_path() {
  const auto data = data_folder();
  if (!data)
    return failure(ErrorKind::NotFound,
                   "This user has no home folder to keep a log in. Name a place with --log.");
  const fs::path folder = *data / "rackside";
  std::error_code problem;
  if (fs::create_directories(folder, problem))
    fs::permissions(folder, fs::perms::owner_all, problem);
  if (problem)
    return failure(ErrorKind::ReadOnly,
                   fmt::format("The folder {} cannot be made. Name another place with --log.",
                               folder.string()),
                   folder.string());
  return folder / "log.db";
}

}  // namespace rackside

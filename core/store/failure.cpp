#include "core/store/failure.hpp"

#include <fmt/format.h>
#include <sqlite3.h>
#include <unistd.h>

namespace rackside::store {
namespace {

namespace fs = std::filesystem;

Error cannot_open(const fs::path& path, const std::string& where) {
  std::error_code ignored;
  const fs::path folder = path.has_parent_path() ? path.parent_path() : fs::path(".");
  if (!fs::is_directory(folder, ignored))
    return {ErrorKind::NotFound,
            fmt::format("There is no folder {}. Make it first, or name another place for the log.",
                        folder.string()),
            where};
  if (fs::is_directory(path, ignored))
    return {ErrorKind::NotOurs, fmt::format("{} is a folder, not a log.", path.string()), where};
  if (!fs::exists(path, ignored) && access(folder.c_str(), W_OK) == 0)
    return {ErrorKind::NotFound, fmt::format("There is no log at {}.", path.string()), where};
  return {ErrorKind::ReadOnly,
          fmt::format("The log {} cannot be opened here: this user may not read it or may not "
                      "write to its folder. Nothing was changed.",
                      path.string()),
          where};
}

}  // namespace

Error explain(int code, const fs::path& path) {
  const std::string where = fmt::format("{} (SQLite code {})", path.string(), code);
  const std::string log = path.string();
  switch (code & 0xFF) {
    case SQLITE_FULL:
      return {ErrorKind::Full,
              "The disk is full. This was not saved; everything saved before is safe. Make room, "
              "then do it again.",
              where};
    case SQLITE_READONLY:
    case SQLITE_PERM:
      return {ErrorKind::ReadOnly,
              fmt::format("The log {} can be read but not written to. This was not saved; "
                          "everything saved before is safe.",
                          log),
              where};
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
      return {ErrorKind::Busy,
              "Another program is writing to the log just now. This was not saved; do it again in "
              "a moment.",
              where};
    case SQLITE_NOTADB:
      return {ErrorKind::NotOurs,
              fmt::format("{} is not a Rackside log. It was left as it is.", log), where};
    case SQLITE_CORRUPT:
    case SQLITE_ERROR:  // our own statements fit our own tables, so the tables are not as we made
                        // them
      return {ErrorKind::Broken,
              fmt::format("The log {} is damaged. Nothing was changed. Keep the file, and go on "
                          "from your last backup.",
                          log),
              where};
    case SQLITE_CANTOPEN: return cannot_open(path, where);
    case SQLITE_NOMEM:
      return {ErrorKind::Broken, "There is not enough memory. This was not saved.", where};
    default:
      return {ErrorKind::Broken,
              "The disk did not do what was asked. This was not saved; everything saved before "
              "should be safe. Look at the disk or memory card, then do it again.",
              where};
  }
}

}  // namespace rackside::store

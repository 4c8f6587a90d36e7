#include "core/store/pictures.hpp"

#include <fmt/format.h>

#include "core/file/read_text.hpp"
#include "core/file/save_file.hpp"

namespace rackside {
namespace {

namespace fs = std::filesystem;

Result<void> copy_picture(const fs::path& from, const fs::path& to) {
  const auto bytes = read_text(from);
  if (!bytes) return tl::unexpected(bytes.error());
  std::error_code ignored;
  if (!fs::exists(to, ignored))
    if (auto saved = save_file(to.string(), *bytes); !saved) return saved;
  const auto copied = read_text(to);
  if (copied && *copied == *bytes) return {};
  return failure(ErrorKind::Broken,
                 fmt::format("{} is not the same as {}. Look at the disk or memory card, and back "
                             "up to another place.",
                             to.string(), from.string()));
}

}  // namespace

fs::path pictures_beside(const fs::path& log) { return log.string() + ".pictures"; }

Result<int> back_up_pictures(const fs::path& log, const fs::path& copy) {
  std::error_code problem;
  int copied = 0;
  if (!fs::exists(pictures_beside(log), problem)) return copied;
  fs::directory_iterator entries(pictures_beside(log), problem);
  for (const fs::directory_iterator end; !problem && entries != end; entries.increment(problem)) {
    // One that is being written just now has another ending, and no event names it yet.
    if (entries->path().extension() != ".png") continue;
    std::error_code refused;  // told by the file that cannot be written then
    fs::create_directories(pictures_beside(copy), refused);
    const fs::path to = pictures_beside(copy) / entries->path().filename();
    if (auto done = copy_picture(entries->path(), to); !done) return tl::unexpected(done.error());
    ++copied;
  }
  if (problem)
    return failure(ErrorKind::Broken,
                   fmt::format("The folder {} cannot be read.", pictures_beside(log).string()));
  return copied;
}

}  // namespace rackside

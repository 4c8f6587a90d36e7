#include "core/program/text_file.hpp"

#include <fmt/format.h>

#include <utility>

namespace rackside::program {

namespace fs = std::filesystem;

NewTextFile::NewTextFile(fs::path path, fs::path unfinished)
    : path_(std::move(path)), unfinished_(std::move(unfinished)) {
  out_.open(unfinished_.empty() ? path_ : unfinished_, std::ios::binary | std::ios::trunc);
}

Result<NewTextFile> NewTextFile::create(const fs::path& path) {
  std::error_code ignored;
  // A pipe or a device has its name already.
  const bool ordinary = !fs::exists(path, ignored) || fs::is_regular_file(path, ignored);
  const fs::path unfinished = ordinary ? path.string() + ".unfinished" : "";
  NewTextFile file(path, unfinished);
  if (!file.out_)
    return failure(ErrorKind::ReadOnly,
                   fmt::format("{} cannot be written. Is there such a folder, and may this user "
                               "write to it?",
                               path.string()));
  return file;
}

NewTextFile::~NewTextFile() {
  if (unfinished_.empty()) return;
  std::error_code ignored;
  fs::remove(unfinished_, ignored);
}

Result<void> NewTextFile::finish() {
  out_.close();
  std::error_code problem;
  if (out_ && !unfinished_.empty()) fs::rename(unfinished_, path_, problem);
  if (!out_ || problem)
    return failure(
        ErrorKind::Full,
        fmt::format("{} could not be written to its end. Is there room on the disk? What "
                    "was there before was left as it is.",
                    path_.string()));
  unfinished_.clear();
  return {};
}

}  // namespace rackside::program

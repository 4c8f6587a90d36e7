#pragma once
// A file of text that is written piece by piece.

#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>

#include "core/values/result.hpp"

namespace rackside::program {

/// A file that gets its name when everything is in it: until then, one that was there before stays
/// as it is, and if it never comes to that, nothing is left behind.
class NewTextFile {
 public:
  /// Errors: ReadOnly.
  [[nodiscard]] static Result<NewTextFile> create(const std::filesystem::path& path);

  NewTextFile(NewTextFile&&) = default;
  NewTextFile& operator=(NewTextFile&&) = delete;
  ~NewTextFile();

  void write(std::string_view text) { out_ << text; }
  /// Errors: Full.
  [[nodiscard]] Result<void> finish();

 private:
  NewTextFile(std::filesystem::path path, std::filesystem::path unfinished);

  std::filesystem::path path_;
  std::filesystem::path unfinished_;  // empty when there is none to clean up
  std::ofstream out_;
};

}  // namespace rackside::program

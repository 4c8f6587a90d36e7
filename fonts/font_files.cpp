#include "fonts/font_files.hpp"

#include <fmt/format.h>

#include <filesystem>

namespace rackside {
namespace {

namespace fs = std::filesystem;

struct Row {
  const char* name;
  const char* folder;
  const char* package;
};

Row row_of(FontFile file) {
  constexpr auto b612 = "/usr/share/fonts/opentype/b612";
  constexpr auto dejavu = "/usr/share/fonts/truetype/dejavu";
  switch (file) {
    case FontFile::Regular: return {"B612-Regular.otf", b612, "fonts-b612"};
    case FontFile::Bold: return {"B612-Bold.otf", b612, "fonts-b612"};
    case FontFile::Italic: return {"B612-Italic.otf", b612, "fonts-b612"};
    case FontFile::Code: return {"DejaVuSansMono-Bold.ttf", dejavu, "fonts-dejavu-core"};
  }
  return {};
}

}  // namespace

Result<std::string> font_path(FontFile file, const std::string& program) {
  const Row row = row_of(file);
  const fs::path beside = fs::path(program).parent_path() / ".." / "share" / "rackside" / "fonts";
  std::error_code ignored;
  for (const fs::path& folder : {beside, fs::path(row.folder)})
    if (fs::exists(folder / row.name, ignored)) return (folder / row.name).string();
  return failure(ErrorKind::NotFound,
                 fmt::format("The typeface {} is not on this machine. Install {} and start again.",
                             row.name, row.package));
}

std::string running_program() {
  std::error_code error;
  const fs::path path = fs::read_symlink("/proc/self/exe", error);
  return error ? std::string{} : path.string();
}

}  // namespace rackside

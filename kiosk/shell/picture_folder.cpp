#include "kiosk/shell/picture_folder.hpp"

#include "core/file/save_file.hpp"
#include "labels/picture/picture_file.hpp"

namespace rackside::kiosk {
namespace {

// The sentence of a file that was not written names paths; whoever stands at the rack needs to hear
// what it means.
std::string why(ErrorKind kind) {
  return kind == ErrorKind::Full ? "There is no room for a picture."
                                 : "Without a picture: its folder cannot be written to.";
}

}  // namespace

Result<std::string> keep_picture(const std::filesystem::path& folder, const EventId& event,
                                 const GreyImage& picture) {
  std::error_code refused;  // told by the file that cannot be written then
  std::filesystem::create_directories(folder, refused);
  const std::string name = format_uuid(event.value) + ".png";
  return as_png(picture)
      .and_then(
          [&](const std::string& bytes) { return save_file((folder / name).string(), bytes); })
      .map([&] { return name; })
      .map_error([](const Error& error) {
        return Error{error.kind, why(error.kind), error.where};
      });
}

}  // namespace rackside::kiosk

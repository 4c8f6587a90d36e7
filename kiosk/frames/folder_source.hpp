#pragma once
// Pictures from a folder or a single file: for tests, for demos, and for a camera program that
// writes its pictures to disk.

#include <deque>
#include <filesystem>
#include <memory>
#include <set>

#include "kiosk/frames/doorbell.hpp"
#include "kiosk/frames/frame_source.hpp"

namespace rackside {

/// Gives each PNG or PGM file of the folder once: those that are there, in the order of their
/// names, and then each that is written or moved into it, as soon as it is closed. A file that is
/// overwritten counts as new. The kernel says when (inotify): nothing is polled. Given a file, its
/// pictures come in order, and then nothing more.
class FolderSource final : public FrameSource {
 public:
  /// Errors: NotFound when there is neither a folder nor a file at `path`.
  [[nodiscard]] static Result<std::unique_ptr<FolderSource>> open(std::filesystem::path path);

  [[nodiscard]] Result<std::optional<GreyImage>> next(std::chrono::milliseconds patience) override;
  void interrupt() override { bell_.ring(); }
  [[nodiscard]] std::string name() const override;

 private:
  FolderSource(std::filesystem::path path, Descriptor watch);

  void list_folder();
  void hear_news();
  void take_in(const std::filesystem::path& file);
  [[nodiscard]] Result<std::optional<GreyImage>> from_next_file();

  std::filesystem::path path_;
  Descriptor watch_;
  Doorbell bell_;
  std::set<std::filesystem::path> waiting_;  // by name
  std::deque<GreyImage> pictures_;           // of the file last opened
};

}  // namespace rackside

#include "kiosk/frames/folder_source.hpp"

#include <sys/inotify.h>
#include <unistd.h>

#include <array>

#include "labels/picture/picture_file.hpp"

namespace rackside {
namespace {

namespace fs = std::filesystem;

bool named_like_picture(const fs::path& file) {
  std::string extension = file.extension().string();
  for (char& c : extension) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return extension == ".png" || extension == ".pgm";
}

Descriptor watch_on(const fs::path& folder) {
  Descriptor watch(::inotify_init1(IN_NONBLOCK | IN_CLOEXEC));
  // Closed after writing or moved in, so that no half-written file is opened.
  if (::inotify_add_watch(watch.get(), folder.c_str(), IN_CLOSE_WRITE | IN_MOVED_TO) < 0)
    return Descriptor{};
  return watch;
}

}  // namespace

Result<std::unique_ptr<FolderSource>> FolderSource::open(fs::path path) {
  std::error_code error;
  const bool folder = fs::is_directory(path, error);
  if (!folder && !fs::is_regular_file(path, error))
    return failure(ErrorKind::NotFound, "There is no folder or file of pictures here.",
                   path.string());
  // The watch starts before the folder is listed: a file between the two is seen twice, not never.
  auto source =
      std::unique_ptr<FolderSource>(new FolderSource(path, folder ? watch_on(path) : Descriptor{}));
  if (folder)
    source->list_folder();
  else
    source->waiting_.insert(path);
  return source;
}

FolderSource::FolderSource(fs::path path, Descriptor watch)
    : path_(std::move(path)), watch_(std::move(watch)) {}

Result<std::optional<GreyImage>> FolderSource::next(std::chrono::milliseconds patience) {
  hear_news();
  if (pictures_.empty() && waiting_.empty()) {
    if (bell_.wait(watch_.get(), patience) != Woken::Ready) return std::nullopt;
    hear_news();
  }
  if (pictures_.empty() && waiting_.empty()) return std::nullopt;
  if (pictures_.empty()) return from_next_file();
  GreyImage picture = std::move(pictures_.front());
  pictures_.pop_front();
  return picture;
}

Result<std::optional<GreyImage>> FolderSource::from_next_file() {
  const fs::path file = waiting_.extract(waiting_.begin()).value();
  auto loaded = load_pictures(file);
  if (!loaded) return tl::unexpected(loaded.error());
  pictures_.assign(std::make_move_iterator(loaded->begin()),
                   std::make_move_iterator(loaded->end()));
  GreyImage first = std::move(pictures_.front());
  pictures_.pop_front();
  return first;
}

std::string FolderSource::name() const {
  return (watch_.open() ? "pictures in " : "pictures of ") + path_.string();
}

void FolderSource::list_folder() {
  std::error_code error;
  for (const auto& entry : fs::directory_iterator(path_, error)) take_in(entry.path());
}

void FolderSource::hear_news() {
  alignas(inotify_event) std::array<char, 4096> buffer;
  while (watch_.open()) {
    const auto length = ::read(watch_.get(), buffer.data(), buffer.size());
    if (length <= 0) return;
    for (char* at = buffer.data(); at < buffer.data() + length;) {
      const auto* event = reinterpret_cast<const inotify_event*>(at);
      if (event->mask & IN_Q_OVERFLOW) list_folder();
      if (event->len > 0) take_in(path_ / event->name);
      at += sizeof(inotify_event) + event->len;
    }
  }
}

void FolderSource::take_in(const fs::path& file) {
  if (named_like_picture(file)) waiting_.insert(file);
}

}  // namespace rackside

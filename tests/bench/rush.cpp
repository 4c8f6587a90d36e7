#include "tests/bench/rush.hpp"

#include "core/interchange/export.hpp"
#include "core/store/sqlite_log.hpp"
#include "tests/generators/frames.hpp"

namespace rackside::bench {

using namespace std::chrono_literals;

BusyCamera::BusyCamera() {
  tests::Random random(3);
  const auto modules = tests::symbol_of(std::string(tests::random_code(random).text()), 1);
  for (int i = 0; i < 30; ++i)
    pictures_.push_back(tests::photograph(modules, tests::Scene{}, random).image);
}

Result<std::optional<GreyImage>> BusyCamera::next(std::chrono::milliseconds patience) {
  std::this_thread::sleep_for(std::min(patience, 33ms));
  if (!delivering) return std::nullopt;
  return pictures_[static_cast<std::size_t>(++delivered) % pictures_.size()];
}

Rush::Rush(TimedKiosk& kiosk, const std::filesystem::path& log)
    : kiosk_(kiosk),
      exporting_([this, log] { export_again(log); }),
      reading_([this] { read_again(); }) {}

Rush::~Rush() {
  over_ = true;
  exporting_.join();
  reading_.join();
}

void Rush::begin() {
  BusyCamera::delivering = true;
  going_ = true;
}

void Rush::export_again(const std::filesystem::path& path) {
  const auto log = SqliteLog::open(path, Access::Read).value();
  std::int64_t written = 0;
  const auto take = [&](std::string_view text) {
    written += static_cast<std::int64_t>(text.size());
  };
  while (!over_) {
    std::this_thread::sleep_for(10ms);
    if (!going_) continue;
    if (!export_log(*log, take, take)) std::exit(1);
    ++exports_;
  }
}

void Rush::read_again() {
  while (!over_) {
    std::this_thread::sleep_for(2s);
    if (going_) kiosk_.reload();
  }
}

}  // namespace rackside::bench

#include "labels/program/session.hpp"

#include <fmt/format.h>

#include <cstdio>

#include "core/store/default_path.hpp"
#include "core/store/sqlite_log.hpp"

namespace rackside {

Result<std::filesystem::path> Session::log_path() const {
  if (!log_option.empty()) return std::filesystem::path(log_option);
  return default_log_path();
}

Result<std::unique_ptr<LogStore>> Session::open_log(Access access) const {
  const auto path = log_path();
  if (!path) return tl::unexpected(path.error());
  auto log = SqliteLog::open(*path, access);
  if (!log) return tl::unexpected(log.error());
  return std::unique_ptr<LogStore>(std::move(*log));
}

Result<std::unique_ptr<LogStore>> Session::open_existing_log() const {
  auto reading = open_log(Access::Read);
  if (!reading) return reading;
  return open_log(Access::Write);
}

int say(const Error& error) {
  // Many sentences name the file or the line already.
  const std::string place = error.where.substr(0, error.where.find(" ("));
  const bool said = place.empty() || error.sentence.find(place) != std::string::npos;
  fmt::print(stderr, "rackside-labels: {}{}\n", error.sentence,
             said ? std::string{} : fmt::format(" ({})", place));
  return exit_failed;
}

int say_usage(const std::string& sentence) {
  fmt::print(stderr, "rackside-labels: {}\n", sentence);
  return exit_usage;
}

}  // namespace rackside

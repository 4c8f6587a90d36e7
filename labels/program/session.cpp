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

int say(const Error& error) {
  const bool place_said =
      error.where.empty() || error.sentence.find(error.where) != std::string::npos;
  fmt::print(stderr, "rackside-labels: {}{}\n", error.sentence,
             place_said ? std::string{} : fmt::format(" ({})", error.where));
  return exit_failed;
}

int say_usage(const std::string& sentence) {
  fmt::print(stderr, "rackside-labels: {}\n", sentence);
  return exit_usage;
}

}  // namespace rackside

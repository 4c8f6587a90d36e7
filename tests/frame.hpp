#pragma once
// What every test file includes: Catch2, RapidCheck, and where the outside data stand if they do.

#include <rapidcheck.h>
#include <rapidcheck/catch.h>
#include <catch2/catch.hpp>
#include <random>

#include <filesystem>
#include <optional>
#include <string>

namespace rackside::tests {

/// A published data set that is too large to stand in tests/data, from the folder `shared/data`
/// beside the checkout. None on a machine that does not have it; the test then says "skipped: not
/// here" and passes.
inline std::optional<std::filesystem::path> outside_data(const std::string& name) {
  const auto path = std::filesystem::path(RACKSIDE_SOURCE_DIR) / ".." / "shared" / "data" / name;
  if (!std::filesystem::exists(path)) return std::nullopt;
  return path;
}

}  // namespace rackside::tests

#pragma once
// How this room fails. Inside it a failed SQLite call throws; every public function turns that into
// its Result at the edge, so that nothing outside ever sees an exception or a SQLite code.

#include <exception>
#include <filesystem>
#include <type_traits>

#include "core/values/result.hpp"

namespace rackside::store {

struct StoreFailure : std::exception {
  explicit StoreFailure(Error e) : error(std::move(e)) {}
  [[nodiscard]] const char* what() const noexcept override { return error.sentence.c_str(); }
  Error error;
};

/// What a SQLite result code (extended) on the log at `path` means to a person.
[[nodiscard]] Error explain(int code, const std::filesystem::path& path);

/// Runs `work` and gives back what it returned or how it failed.
template <class Work>
auto guarded(const Work& work) -> Result<std::invoke_result_t<Work>> {
  try {
    if constexpr (std::is_void_v<std::invoke_result_t<Work>>) {
      work();
      return {};
    } else {
      return work();
    }
  } catch (const StoreFailure& failed) {
    return tl::unexpected(failed.error);
  }
}

}  // namespace rackside::store

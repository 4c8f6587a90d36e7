#pragma once
// A file written whole or not at all.

#include <string>
#include <string_view>

#include "core/values/result.hpp"

namespace rackside {

/// Who may read the file: what is written for everybody, or a secret.
enum class Readers { Everybody, OwnerOnly };

/// Writes `bytes` beside `path` and then puts it in its place, so that a full disk leaves what was
/// there before. A device or pipe is written to directly. Errors: Full, ReadOnly, NotFound (the
/// folder), Broken.
[[nodiscard]] Result<void> save_file(const std::string& path, std::string_view bytes,
                                     Readers readers = Readers::Everybody);

}  // namespace rackside

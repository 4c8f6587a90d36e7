#pragma once
// Where the faces of the screen are on this machine. Which face is for what: fonts/CMakeLists.txt.

#include <string>

#include "core/values/result.hpp"

namespace rackside {

enum class FontFile { Regular, Bold, Italic, Code };

/// Looks beside the program (../share/rackside/fonts), then where the distribution's packages put
/// them. `program` is the path of the running program. Errors: NotFound names the package.
[[nodiscard]] Result<std::string> font_path(FontFile file, const std::string& program);

/// The path of the running program, from /proc; empty where there is none.
[[nodiscard]] std::string running_program();

}  // namespace rackside

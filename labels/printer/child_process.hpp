#pragma once
// Another program, run with a list of arguments. There is no shell, so that nothing in a name or a
// title can ever be a command.

#include <chrono>
#include <string>
#include <string_view>
#include <vector>

#include "core/values/result.hpp"

namespace rackside {

struct ProcessOutcome {
  int exit_code = 0;
  std::string output;  // stdout, then stderr
};

/// Runs `arguments[0]` (looked for along PATH) to its end, `input` as its stdin, its messages in
/// English. Errors: NotFound when there is no such program; Broken when it does not end within
/// `patience` (it is ended then) or was killed.
[[nodiscard]] Result<ProcessOutcome> run_program(const std::vector<std::string>& arguments,
                                                 std::string_view input,
                                                 std::chrono::milliseconds patience);

}  // namespace rackside

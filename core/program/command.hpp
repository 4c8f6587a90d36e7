#pragma once
// How rackside-log is put together: one file a subcommand, one line each in commands.cpp.
//
// A subcommand's file has one function that declares its words and gives back what is
// to be done when it was chosen. The work finds the log and the clock on its desk and ends with an
// exit code or an Error, whose sentence the program says.

#include <filesystem>
#include <functional>
#include <vector>

#include "core/clock/clock.hpp"
#include "core/clock/id_source.hpp"
#include "core/options/options.hpp"
#include "core/values/result.hpp"

namespace rackside::program {

inline constexpr int done = 0;
inline constexpr int failed = 1;  // said in one sentence on stderr
inline constexpr int wrong_words = CommandLine::wrong_words;

struct Desk {
  std::filesystem::path log;
  Clock& clock;
  IdSource& ids;
};

struct Command {
  Vocabulary words;
  std::function<Result<int>(Desk&)> work;
};

/// Declares every subcommand to `parser`, in the order of the help.
[[nodiscard]] std::vector<Command> add_commands(Vocabulary& parser);

}  // namespace rackside::program

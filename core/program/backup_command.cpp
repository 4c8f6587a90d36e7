#include "core/program/backup_command.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include "core/program/wording.hpp"
#include "core/store/backup.hpp"
#include "core/store/pictures.hpp"

namespace rackside::program {
namespace {

bool tell_progress(double share) {
  if (isatty(STDERR_FILENO) != 0) {
    fmt::print(stderr, "\r{:3.0f} %{}", share * 100, share < 1 ? "" : "\n");
    std::fflush(stderr);
  }
  return true;
}

Result<int> back_up_log(const std::string& to, const Desk& desk) {
  const auto end = back_up(desk.log, to, tell_progress);
  if (!end) return tl::unexpected(end.error());
  const std::string whole = fmt::format("{} holds the whole log, and was read back.", to);
  // After the log, so that every picture that the copy names is among them.
  const auto pictures = back_up_pictures(desk.log, to);
  if (!pictures) {
    Error problem = pictures.error();
    problem.sentence =
        fmt::format("{} Its pictures are not all beside it: {}", whole, problem.sentence);
    return tl::unexpected(std::move(problem));
  }
  fmt::print("{}{}\n", whole,
             *pictures == 0 ? ""
                            : fmt::format(" {} beside it, in {}.", counted(*pictures, "picture"),
                                          pictures_beside(to).string()));
  return done;
}

}  // namespace

Command add_backup_command(Vocabulary& parser) {
  const auto to = std::make_shared<std::string>();
  Vocabulary command = parser.subcommand(
      "backup",
      "Copy the log into a new file while it is in use, and its pictures beside it. The copy is "
      "read back before it gets its name; a file that is there already is never replaced.");
  command.option("--to", *to, "the new file").value_name("PATH").required();
  return {command, [to](Desk& desk) { return back_up_log(*to, desk); }};
}

}  // namespace rackside::program

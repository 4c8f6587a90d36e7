#include "core/program/check_command.hpp"

#include <fmt/format.h>

#include "core/program/wording.hpp"
#include "core/store/log_check.hpp"

namespace rackside::program {
namespace {

Result<int> check(CheckDepth depth, const Desk& desk) {
  const auto report = check_log(desk.log, depth);
  if (!report) return tl::unexpected(report.error());
  fmt::print("{} of {}.\n", counted(report->events, "event"), counted(report->kiosks, "kiosk"));
  if (report->findings.empty()) {
    fmt::print("Everything in the log can be read, and nothing is missing.\n");
    return done;
  }
  for (const auto& finding : report->findings) fmt::print("{}\n", finding);
  return failure(ErrorKind::Broken,
                 fmt::format("The log {} is not whole. Nothing was changed. Keep the file, and "
                             "merge it into your last backup with \"merge\".",
                             desk.log.string()));
}

}  // namespace

Command add_check_command(Vocabulary& parser) {
  const auto thorough = std::make_shared<bool>(false);
  Vocabulary command = parser.subcommand(
      "check", "Read the whole log and say what is damaged or missing. Changes nothing.");
  command.flag("--thorough", *thorough,
               "also look at every entry of every index: takes half a minute where the quick "
               "check takes a few seconds");
  return {command, [thorough](Desk& desk) {
            return check(*thorough ? CheckDepth::Thorough : CheckDepth::Quick, desk);
          }};
}

}  // namespace rackside::program

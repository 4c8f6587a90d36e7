#include "core/program/own_kiosk_command.hpp"

#include <fmt/format.h>

#include "core/store/own_kiosk.hpp"

namespace rackside::program {
namespace {

Result<int> make_own(const Desk& desk) {
  std::error_code absent;
  if (!std::filesystem::exists(desk.log, absent))
    return failure(ErrorKind::NotFound,
                   fmt::format("There is no log at {}. Nothing was done.", desk.log.string()));
  const auto made = make_own_kiosk(desk.log, KioskId{desk.ids.next()});
  if (!made) return tl::unexpected(made.error());
  fmt::print("{} is a kiosk of its own now. What is in it stays; \"merge\" brings both together.\n",
             desk.log.string());
  return done;
}

}  // namespace

Command add_own_kiosk_command(Vocabulary& parser) {
  Vocabulary command = parser.subcommand("own-kiosk",
                                         "For a copied log that a second kiosk is to use: what "
                                         "it writes from now on is its own. Run it "
                                         "on the copy, once.");
  return {command, [](Desk& desk) { return make_own(desk); }};
}

}  // namespace rackside::program

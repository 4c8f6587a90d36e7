#include "core/program/backtest_command.hpp"
#include "core/program/backup_command.hpp"
#include "core/program/check_command.hpp"
#include "core/program/command.hpp"
#include "core/program/cover_command.hpp"
#include "core/program/export_command.hpp"
#include "core/program/forecast_command.hpp"
#include "core/program/import_command.hpp"
#include "core/program/merge_command.hpp"
#include "core/program/own_kiosk_command.hpp"
#include "core/program/readings_command.hpp"
#include "core/program/returned_command.hpp"
#include "core/program/rules_command.hpp"
#include "core/program/supplies_command.hpp"
#include "core/program/today_command.hpp"

namespace rackside::program {

std::vector<Command> add_commands(Vocabulary& parser) {
  return {
      add_import_command(parser),   add_export_command(parser),    add_merge_command(parser),
      add_check_command(parser),    add_backup_command(parser),    add_today_command(parser),
      add_rules_command(parser),    add_readings_command(parser),  add_forecast_command(parser),
      add_backtest_command(parser), add_cover_command(parser),     add_supplies_command(parser),
      add_returned_command(parser), add_own_kiosk_command(parser),
  };
}

}  // namespace rackside::program

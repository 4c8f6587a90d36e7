#pragma once
// The subcommands. Each adds its options to `app` and, when it was chosen, puts its work into
// `job`.

#include <CLI/CLI.hpp>

#include "labels/program/session.hpp"

namespace rackside {

void add_sheet_command(CLI::App& app, Session& session, Job& job);
void add_batch_command(CLI::App& app, Session& session, Job& job);
void add_proof_command(CLI::App& app, Session& session, Job& job);
void add_read_command(CLI::App& app, Session& session, Job& job);
void add_cards_command(CLI::App& app, Session& session, Job& job);
void add_shelves_command(CLI::App& app, Session& session, Job& job);
void add_badges_command(CLI::App& app, Session& session, Job& job);
void add_handover_command(CLI::App& app, Session& session, Job& job);
void add_returned_command(CLI::App& app, Session& session, Job& job);
void add_calibrate_command(CLI::App& app, Session& session, Job& job);
void add_printers_command(CLI::App& app, Session& session, Job& job);
void add_sheets_command(CLI::App& app, Session& session, Job& job);

}  // namespace rackside

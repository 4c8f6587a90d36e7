#pragma once
// The subcommands. Each adds its options to `app` and, when it was chosen, puts its work into
// `job`.

#include "core/options/options.hpp"
#include "labels/program/session.hpp"

namespace rackside {

void add_sheet_command(Vocabulary& app, Session& session, Job& job);
void add_batch_command(Vocabulary& app, Session& session, Job& job);
void add_proof_command(Vocabulary& app, Session& session, Job& job);
void add_read_command(Vocabulary& app, Session& session, Job& job);
void add_cards_command(Vocabulary& app, Session& session, Job& job);
void add_shelves_command(Vocabulary& app, Session& session, Job& job);
void add_badges_command(Vocabulary& app, Session& session, Job& job);
void add_handover_command(Vocabulary& app, Session& session, Job& job);
void add_returned_command(Vocabulary& app, Session& session, Job& job);
void add_calibrate_command(Vocabulary& app, Session& session, Job& job);
void add_printers_command(Vocabulary& app, Session& session, Job& job);
void add_sheets_command(Vocabulary& app, Session& session, Job& job);

}  // namespace rackside

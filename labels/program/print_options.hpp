#pragma once
// The options that all printing subcommands share, and what they mean.

#include <string>

#include "core/options/options.hpp"
#include "labels/calibration/kept_offsets.hpp"
#include "labels/printing/print_run.hpp"
#include "labels/program/session.hpp"
#include "labels/render/label_sheet.hpp"

namespace rackside {

struct PrintOptions {
  std::string sheet = "a4-5x13";
  std::string sheets_file;
  int dots_per_inch = 300;
  std::string start = "1";
  std::string offset;
  std::string out;
  std::string printer;
  bool without_proof = false;
};

/// --sheet, --sheets-file, --dpi, --start, --offset.
void add_sheet_options(Vocabulary& command, PrintOptions& options);
/// --dpi alone.
void add_resolution_option(Vocabulary& command, PrintOptions& options);
/// --sheets-file alone.
void add_sheets_file_option(Vocabulary& command, PrintOptions& options);
/// --without-proof.
void add_proof_option(Vocabulary& command, PrintOptions& options);
/// --out and --printer.
void add_output_options(Vocabulary& command, PrintOptions& options,
                        const std::string& default_file);

/// All sheets there are: the built-in ones with the user's own. Errors: as parse_stock, NotFound
/// for a file that was named and is not there.
[[nodiscard]] Result<std::vector<Stock>> known_stock(const Session& session,
                                                     const PrintOptions& options);
/// With the offset that was kept for this printer and sheet, where none was given. Errors: BadInput
/// and NotFound, in the user's own words.
[[nodiscard]] Result<SheetSettings> settings_from(const Session& session,
                                                  const PrintOptions& options);

/// The file of offsets that were kept, and what stands in it (nothing when there is none). Errors:
/// as parse_offsets.
[[nodiscard]] Result<std::filesystem::path> offsets_file(const Session& session);
[[nodiscard]] Result<std::vector<KeptOffset>> kept_offsets(const Session& session);

[[nodiscard]] Destination destination_from(const PrintOptions& options);

/// "0.5,-0.3" in millimetres. Errors: BadInput.
[[nodiscard]] Result<PrintOffset> parse_offset(const std::string& text);

}  // namespace rackside

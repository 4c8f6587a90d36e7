#pragma once
// Pages on their way out: into files, or to a printer.

#include "labels/program/print_options.hpp"
#include "labels/render/pages.hpp"

namespace rackside {

/// Says whether the options name something that can be written to, before any work is done. Errors:
/// BadInput.
[[nodiscard]] Result<void> check_output(const PrintOptions& options);

/// Writes or prints the pages, and says where they went: "labels.pdf", "printer rack-room, job
/// rack-room-12". Errors: as save_pages and Printer::print; nothing came out then.
[[nodiscard]] Result<std::string> deliver(const Pages& pages, const std::string& title,
                                          const PrintOptions& options);

}  // namespace rackside

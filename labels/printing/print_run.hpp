#pragma once
// A print run from the words of the labels to paper: planned, proven, handed over. For the program
// and for the kiosk; who ran it records afterwards what came out.

#include <string>
#include <variant>
#include <vector>

#include "labels/printer/printer.hpp"
#include "labels/proof/label_proof.hpp"
#include "labels/render/label_sheet.hpp"

namespace rackside {

struct ToFile {
  std::string path;  // .pdf, .svg or .png
};
struct ToPrinter {
  std::string queue;
};
using Destination = std::variant<ToFile, ToPrinter>;

enum class Proving { Each, None };

struct PrintOutcome {
  std::vector<Code> printed;
  std::vector<LabelProof> held_back;  // labels that did not read back
  int pages = 0;
  std::string where;     // "labels.pdf", "printer rack-room (request id is rack-room-12)"
  std::string left_out;  // as what_was_left_out
};

/// Whether labels could be printed so, found out before anything is written anywhere. Errors: as
/// plan_sheet and format_of.
[[nodiscard]] Result<void> check_print(const SheetSettings& settings,
                                       const Destination& destination);

/// Writes or prints the pages, and says where they went. Errors: as save_pages and Printer::print;
/// nothing came out then.
[[nodiscard]] Result<std::string> deliver(const Pages& pages, const std::string& title,
                                          const Destination& destination, Resolution resolution,
                                          Printer& printer);

/// Errors: as plan_sheet and deliver. When every label is held back, nothing is handed over and
/// `printed` is empty.
[[nodiscard]] Result<PrintOutcome> print_labels(const std::vector<LabelContent>& contents,
                                                const SheetSettings& settings, Proving proving,
                                                const Destination& destination, Printer& printer);

}  // namespace rackside

#pragma once
// Prints the labels of new tubs the way the kiosk is set up: to a printer, or into a file beside
// the log.

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "core/cover/return_report.hpp"
#include "core/overview/cover_reading.hpp"
#include "core/values/time.hpp"
#include "kiosk/model/intent.hpp"
#include "labels/handover/page_flow.hpp"
#include "labels/label/label_content.hpp"
#include "labels/printer/printer.hpp"
#include "labels/printing/print_run.hpp"

namespace rackside::kiosk {

class LabelPress {
 public:
  LabelPress(std::filesystem::path log, std::unique_ptr<Printer> printer)
      : log_(std::move(log)), printer_(std::move(printer)) {}

  /// Takes seconds for hundreds of labels, for each one is read back before it is printed. One
  /// thread at a time. Errors: as print_labels; no such sheet.
  [[nodiscard]] Result<PrintOutcome> print(const std::vector<LabelContent>& contents,
                                           const Settings& settings, const Moment& now);
  /// The sheet for the wall, and the report afterwards. To the printer where it has whole pages,
  /// else into a file beside the log. Gives back what became of it, as a sentence. Errors: as
  /// deliver; no such label sheet.
  [[nodiscard]] Result<std::string> print_handover(const CoverReading& reading,
                                                   const Settings& settings, const Moment& now);
  [[nodiscard]] Result<std::string> print_return(const ReturnReport& report,
                                                 const Settings& settings, const Moment& now);
  /// What can be chosen from.
  [[nodiscard]] PrintersFound choices();

 private:
  // Millimetres; no printer: into a file.
  struct Paper {
    double width;
    double height;
    std::string printer;
  };
  [[nodiscard]] Result<Paper> paper_for(const Settings& settings) const;
  [[nodiscard]] Result<std::string> print(const Flow& flow, const Paper& paper,
                                          std::string_view name, const std::string& title,
                                          const Settings& settings, const Moment& now);

  std::filesystem::path log_;
  std::unique_ptr<Printer> printer_;
};

/// What came out, in a sentence.
[[nodiscard]] std::string print_words(const PrintOutcome& outcome);

}  // namespace rackside::kiosk

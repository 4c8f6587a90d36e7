#pragma once
// Prints the labels of new tubs the way the kiosk is set up: to a printer, or into a file beside
// the log.

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "core/values/time.hpp"
#include "kiosk/model/intent.hpp"
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
  /// What can be chosen from.
  [[nodiscard]] PrintersFound choices();

 private:
  std::filesystem::path log_;
  std::unique_ptr<Printer> printer_;
};

/// What came out, in a sentence.
[[nodiscard]] std::string print_words(const PrintOutcome& outcome);

}  // namespace rackside::kiosk

#pragma once
// Printing through CUPS, by its own programs `lp` and `lpstat`.

#include <chrono>

#include "labels/printer/printer.hpp"

namespace rackside {

class LpPrinter : public Printer {
 public:
  /// The programs to run, and how long to wait for each.
  explicit LpPrinter(std::string lp = "lp", std::string lpstat = "lpstat",
                     std::chrono::milliseconds patience = std::chrono::seconds(20));

  Result<std::vector<PrinterQueue>> queues() override;
  Result<std::string> print(const PrintTask& task) override;

 private:
  std::string lp_;
  std::string lpstat_;
  std::chrono::milliseconds patience_;
};

/// What CUPS calls paper of this size: "A4", or "Custom.62x29mm".
[[nodiscard]] std::string media_name(double page_width, double page_height);

}  // namespace rackside

#pragma once
// The port to printers.

#include <string>
#include <vector>

#include "core/values/result.hpp"

namespace rackside {

struct PrinterQueue {
  std::string name;
  bool usual = false;  // the one that is taken when nobody names another
  bool operator==(const PrinterQueue&) const = default;
};

struct PrintTask {
  std::string queue;
  std::string title;
  std::string pdf;        // the bytes of the file
  double page_width = 0;  // millimetres
  double page_height = 0;
};

class Printer {
 public:
  virtual ~Printer() = default;

  /// Errors: NotFound when there is no printing system or it has no printer, Broken.
  [[nodiscard]] virtual Result<std::vector<PrinterQueue>> queues() = 0;
  /// Hands `task` over, and gives back the name the printing system has for it. Errors: NotFound
  /// (no such queue), NotNow (takes no jobs at present), Broken. Nothing was printed then.
  [[nodiscard]] virtual Result<std::string> print(const PrintTask& task) = 0;
};

}  // namespace rackside

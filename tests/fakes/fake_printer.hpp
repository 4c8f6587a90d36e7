#pragma once
// A printer that keeps what it is given, or that fails as it is told.

#include <optional>
#include <vector>

#include "labels/printer/printer.hpp"

namespace rackside::tests {

class FakePrinter : public Printer {
 public:
  std::vector<PrintTask> tasks;
  std::optional<Error> next_failure;

  Result<std::vector<PrinterQueue>> queues() override {
    return std::vector<PrinterQueue>{{"rack-room", true}};
  }
  Result<std::string> print(const PrintTask& task) override {
    if (next_failure) return tl::unexpected(*std::exchange(next_failure, std::nullopt));
    tasks.push_back(task);
    return "job " + std::to_string(tasks.size());
  }
};

}  // namespace rackside::tests

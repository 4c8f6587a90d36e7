#include "labels/printer/lp_printer.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <sstream>

#include "labels/printer/child_process.hpp"

namespace rackside {
namespace {

tl::unexpected<Error> no_printing_system() {
  return failure(ErrorKind::NotFound,
                 "There is no printing system here: CUPS and its program lp are not installed. "
                 "Nothing was printed; write a file instead, with --out.");
}

bool says(const std::string& output, std::string_view words) {
  return output.find(words) != std::string::npos;
}

std::string first_line(const std::string& output) {
  std::string line = output.substr(0, output.find('\n'));
  if (line.starts_with("lp: ")) line.erase(0, 4);
  if (line.starts_with("Error - ")) line.erase(0, 8);
  while (!line.empty() && (line.back() == '.' || line.back() == ' ')) line.pop_back();
  return line.empty() ? "it gave no reason" : line;
}

tl::unexpected<Error> why_not_printed(const std::string& queue, const std::string& output) {
  constexpr std::string_view nothing = "Nothing was printed, and nothing is marked as printed.";
  if (says(output, "does not exist") || says(output, "unknown destination"))
    return failure(ErrorKind::NotFound,
                   fmt::format("The printer \"{}\" is not there. {}", queue, nothing), queue);
  if (says(output, "not accepting"))
    return failure(
        ErrorKind::NotNow,
        fmt::format("The printer \"{}\" takes no jobs at the moment. {}", queue, nothing), queue);
  return failure(ErrorKind::Broken,
                 fmt::format("The printer \"{}\" did not take the job: {}. {}", queue,
                             first_line(output), nothing),
                 queue);
}

// "system default destination: NAME", or "no system default destination".
std::string usual_queue(const std::string& output) {
  constexpr std::string_view before = "destination: ";
  const auto at = output.find(before);
  if (at == std::string::npos) return {};
  const auto start = at + before.size();
  return output.substr(start, output.find_first_of(" \n", start) - start);
}

}  // namespace

LpPrinter::LpPrinter(std::string lp, std::string lpstat, std::chrono::milliseconds patience)
    : lp_(std::move(lp)), lpstat_(std::move(lpstat)), patience_(patience) {}

Result<std::vector<PrinterQueue>> LpPrinter::queues() {
  const auto names = run_program({lpstat_, "-e"}, "", patience_);
  if (!names && names.error().kind == ErrorKind::NotFound) return no_printing_system();
  if (!names) return tl::unexpected(names.error());
  const auto usual = run_program({lpstat_, "-d"}, "", patience_);
  const std::string usual_name = usual ? usual_queue(usual->output) : std::string{};
  std::vector<PrinterQueue> list;
  std::istringstream lines(names->exit_code == 0 ? names->output : std::string{});
  for (std::string line; std::getline(lines, line);)
    if (!line.empty()) list.push_back({line, line == usual_name});
  if (list.empty())
    return failure(ErrorKind::NotFound,
                   "The printing system knows no printer. Nothing was printed.");
  return list;
}

Result<std::string> LpPrinter::print(const PrintTask& task) {
  const auto known = queues();
  if (!known) return tl::unexpected(known.error());
  if (std::ranges::find(*known, task.queue, &PrinterQueue::name) == known->end()) {
    std::vector<std::string> names;
    for (const PrinterQueue& queue : *known) names.push_back(queue.name);
    return failure(
        ErrorKind::NotFound,
        fmt::format("There is no printer \"{}\"; there are: {}. Nothing was printed, and "
                    "nothing is marked as printed.",
                    task.queue, fmt::join(names, ", ")),
        task.queue);
  }
  // Scaled to the page, every module would be a broken number of dots.
  const auto outcome = run_program(
      {lp_, "-d", task.queue, "-t", task.title, "-o",
       "media=" + media_name(task.page_width, task.page_height), "-o", "print-scaling=none"},
      task.pdf, patience_);
  if (!outcome && outcome.error().kind == ErrorKind::NotFound) return no_printing_system();
  if (!outcome) return why_not_printed(task.queue, outcome.error().sentence);
  if (outcome->exit_code != 0) return why_not_printed(task.queue, outcome->output);
  return first_line(outcome->output);
}

std::string media_name(double page_width, double page_height) {
  struct Paper {
    double width;
    double height;
    const char* name;
  };
  // ISO 216 and ANSI/ASME Y14.1.
  constexpr Paper papers[] = {{210, 297, "A4"}, {148, 210, "A5"}, {215.9, 279.4, "Letter"}};
  for (const Paper& paper : papers)
    if (std::abs(paper.width - page_width) < 0.1 && std::abs(paper.height - page_height) < 0.1)
      return paper.name;
  return fmt::format("Custom.{:g}x{:g}mm", page_width, page_height);
}

}  // namespace rackside

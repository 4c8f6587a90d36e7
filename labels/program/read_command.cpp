// rackside-labels read: what the kiosk's reader makes of a picture, a scan or a PDF page.

#include <fmt/format.h>

#include <chrono>
#include <memory>
#include <nlohmann/json.hpp>

#include "labels/program/commands.hpp"
#include "labels/read/file_reader.hpp"

namespace rackside {
namespace {

struct ReadOptions {
  std::vector<std::string> files;
  bool json = false;
};

struct FileReport {
  std::string file;
  Result<FileSightings> sightings;
  double milliseconds = 0;

  [[nodiscard]] bool found() const { return sightings && !sightings->codes.empty(); }
};

FileReport report_on(const std::string& file) {
  const auto start = std::chrono::steady_clock::now();
  auto sightings = codes_in_file(file);
  const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - start;
  return {file, std::move(sightings), took.count()};
}

std::string why_nothing(const FileReport& report) {
  if (!report.sightings) return report.sightings.error().sentence;
  if (report.sightings->foreign > 0) return "a symbol, but none of our codes";
  return "no readable code of ours";
}

void print_lines(const FileReport& report) {
  if (!report.found()) {
    fmt::print("{}\t-\t{}\t{:.1f} ms\n", report.file, why_nothing(report), report.milliseconds);
    return;
  }
  for (const Code& code : report.sightings->codes)
    fmt::print("{}\t{}\t{}\t{:.1f} ms\n", report.file, code.text(), what_it_is(code),
               report.milliseconds);
}

void print_json(const FileReport& report) {
  nlohmann::json line{{"file", report.file}, {"milliseconds", report.milliseconds}};
  line["codes"] = nlohmann::json::array();
  if (report.found())
    for (const Code& code : report.sightings->codes)
      line["codes"].push_back({{"code", code.text()}, {"what", what_it_is(code)}});
  else
    line["why"] = why_nothing(report);
  fmt::print("{}\n", line.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace));
}

int run(const ReadOptions& options) {
  bool all_found = true;
  for (const std::string& file : options.files) {
    const FileReport report = report_on(file);
    options.json ? print_json(report) : print_lines(report);
    all_found = all_found && report.found();
  }
  return all_found ? exit_well : exit_failed;
}

}  // namespace

void add_read_command(Vocabulary& app, Session&, Job& job) {
  auto options = std::make_shared<ReadOptions>();
  auto command = app.subcommand("read", "read codes from PNG, PGM and PDF files");
  command.option("files", options->files, "pictures, or PDF files").required();
  command.flag("--json", options->json, "one JSON object a file");
  command.footer(
      "One line a code: file, code, what it is, and the milliseconds its file took. Exit code 1 "
      "when "
      "a file holds no readable code of ours.");
  command.when_chosen([&job, options] { job = [options] { return run(*options); }; });
}

}  // namespace rackside

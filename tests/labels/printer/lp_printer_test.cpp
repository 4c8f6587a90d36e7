#include "labels/printer/lp_printer.hpp"

#include <filesystem>

#include "labels/printer/child_process.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

// Stands where CUPS' programs would: small scripts that note what they were given.
class PrintingSystem {
 public:
  PrintingSystem() {
    script("lpstat",
           "if [ \"$1\" = -e ]; then echo rack-room; echo shelf_2; exit 0; fi\n"
           "echo 'system default destination: shelf_2'");
    script("lp", "for word in \"$@\"; do echo \"$word\"; done > '" + path("words") + "'\ncat > '" +
                     path("paper") + "'\necho 'request id is rack-room-12 (0 file(s))'");
  }

  void script(const std::string& name, const std::string& body) {
    write_file(path(name), "#!/bin/sh\n" + body + "\n");
    std::filesystem::permissions(path(name), std::filesystem::perms::owner_all);
  }
  [[nodiscard]] std::string path(const std::string& name) const {
    return (folder_ / name).string();
  }
  [[nodiscard]] LpPrinter printer(
      std::chrono::milliseconds patience = std::chrono::seconds(5)) const {
    return LpPrinter(path("lp"), path("lpstat"), patience);
  }

 private:
  TemporaryFolder folder_;
};

PrintTask task(const std::string& queue = "rack-room") {
  return {queue, "Rackside labels", "%PDF-1.5 paper", 210, 297};
}

}  // namespace

TEST_CASE("the printers there are, and which is the usual one") {
  const PrintingSystem system;
  const auto queues = system.printer().queues();
  REQUIRE(queues);
  CHECK(*queues == std::vector<PrinterQueue>{{"rack-room", false}, {"shelf_2", true}});
}

TEST_CASE("a job is handed over as it is, unscaled, on the right paper") {
  const PrintingSystem system;
  const auto job = system.printer().print(task());
  REQUIRE(job);
  CHECK(job->find("rack-room-12") != std::string::npos);
  CHECK(read_file(system.path("words")) ==
        "-d\nrack-room\n-t\nRackside labels\n-o\nmedia=A4\n-o\nprint-scaling=none\n");
  CHECK(read_file(system.path("paper")) == "%PDF-1.5 paper");
  CHECK(media_name(62, 29) == "Custom.62x29mm");
  CHECK(media_name(215.9, 279.4) == "Letter");
}

TEST_CASE("nothing in a name or a title is ever run") {
  const PrintingSystem system;
  PrintTask nasty = task();
  nasty.title = "$(touch " + system.path("touched") + "); `id` \"quoted\"";
  REQUIRE(system.printer().print(nasty));
  CHECK_FALSE(std::filesystem::exists(system.path("touched")));
  CHECK(read_file(system.path("words")).find(nasty.title) != std::string::npos);
  const auto unknown = system.printer().print(task("; rm -rf ."));
  REQUIRE_FALSE(unknown);
  CHECK(unknown.error().kind == ErrorKind::NotFound);
}

TEST_CASE("a large job goes through whole") {
  const PrintingSystem system;
  PrintTask large = task();
  large.pdf = std::string(8'000'000, 'x');
  REQUIRE(system.printer().print(large));
  CHECK(std::filesystem::file_size(system.path("paper")) == large.pdf.size());
}

TEST_CASE("what a printer says is told in plain words, and that nothing was printed") {
  PrintingSystem system;
  const auto answer = [&](const std::string& words) {
    system.script("lp", "echo '" + words + "' >&2; exit 1");
    return system.printer().print(task()).error();
  };
  const Error gone = answer("lp: Error - The printer or class does not exist.");
  CHECK(gone.kind == ErrorKind::NotFound);
  CHECK(gone.sentence ==
        "The printer \"rack-room\" is not there. Nothing was printed, and nothing is marked as "
        "printed.");
  CHECK(answer("lp: Destination \"rack-room\" is not accepting jobs.").kind == ErrorKind::NotNow);
  const Error other = answer("lp: Error - The toner ran away.");
  CHECK(other.kind == ErrorKind::Broken);
  CHECK(other.sentence.find("The toner ran away.") != std::string::npos);
}

TEST_CASE("a printer that vanishes while it is spoken to does not hold up the program") {
  PrintingSystem system;
  system.script("lp", "exec sleep 60");
  const auto start = std::chrono::steady_clock::now();
  const auto job = system.printer(std::chrono::milliseconds(300)).print(task());
  REQUIRE_FALSE(job);
  CHECK(job.error().kind == ErrorKind::Broken);
  CHECK(job.error().sentence.find("nothing is marked as printed") != std::string::npos);
  CHECK(std::chrono::steady_clock::now() - start < std::chrono::seconds(20));
  system.script("lp", "kill -9 $$");
  CHECK(system.printer().print(task()).error().kind == ErrorKind::Broken);
}

TEST_CASE("a machine without a printing system or without a printer says so") {
  LpPrinter nowhere("/nowhere/lp", "/nowhere/lpstat");
  CHECK(nowhere.queues().error().kind == ErrorKind::NotFound);
  CHECK(nowhere.print(task()).error().sentence.find("--out") != std::string::npos);
  PrintingSystem system;
  system.script("lpstat", "exit 1");
  CHECK(system.printer().queues().error().kind == ErrorKind::NotFound);
}

TEST_CASE("programs are run with their input, output and exit code") {
  const auto outcome = run_program({"cat", "-"}, "words", std::chrono::seconds(5));
  REQUIRE(outcome);
  CHECK(outcome->output == "words");
  CHECK(run_program({"sh", "-c", "exit 7"}, "", std::chrono::seconds(5))->exit_code == 7);
  CHECK(run_program({"sh", "-c", "echo $LC_ALL"}, "", std::chrono::seconds(5))->output == "C\n");
}

#include "labels/printing/print_run.hpp"

#include "tests/fakes/fake_printer.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"
#include "tests/labels/render/labels_for_tests.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

SheetSettings on(const std::string& name) { return {stock(name), {300}, {}, 0}; }

}  // namespace

TEST_CASE("a run hands one job with all pages to the printer") {
  FakePrinter printer;
  const auto outcome =
      print_labels(sling_labels(70), on("a4-5x13"), Proving::Each, ToPrinter{"rack-room"}, printer);
  REQUIRE(outcome);
  CHECK(outcome->printed.size() == 70);
  CHECK(outcome->held_back.empty());
  CHECK(outcome->pages == 2);
  REQUIRE(printer.tasks.size() == 1);
  CHECK(printer.tasks[0].queue == "rack-room");
  CHECK(printer.tasks[0].pdf.starts_with("%PDF-"));
  CHECK(printer.tasks[0].page_width == 210);
}

TEST_CASE("a printer that fails leaves an error and nothing printed") {
  FakePrinter printer;
  printer.next_failure = Error{ErrorKind::NotNow, "The printer takes no jobs.", "rack-room"};
  const auto outcome =
      print_labels(sling_labels(3), on("a4-5x13"), Proving::None, ToPrinter{"rack-room"}, printer);
  REQUIRE_FALSE(outcome);
  CHECK(outcome.error().kind == ErrorKind::NotNow);
  CHECK(printer.tasks.empty());
}

TEST_CASE("what is left out for want of room is said") {
  FakePrinter printer;
  const TemporaryFolder folder;
  auto contents = sling_labels(2);
  contents[0].common_name = "a name that is far too long for so small a label";
  const auto outcome = print_labels(contents, on("a4-7x27"), Proving::None,
                                    ToFile{(folder / "labels.pdf").string()}, printer);
  REQUIRE(outcome);
  CHECK(outcome->left_out.find("common name (1 label)") != std::string::npos);
  CHECK(printer.tasks.empty());
  CHECK(std::filesystem::exists(folder / "labels.pdf"));
}

TEST_CASE("what cannot be printed is known before anything is written") {
  CHECK(check_print(on("a4-5x13"), ToFile{"labels.pdf"}));
  CHECK(check_print(on("a4-5x13"), ToPrinter{"rack-room"}));
  CHECK_FALSE(check_print(on("a4-5x13"), ToFile{"labels.doc"}));
  SheetSettings tiny = on("roll-12");
  tiny.stock.cell_height = tiny.stock.page_height = 6;
  CHECK_FALSE(check_print(tiny, ToFile{"labels.pdf"}));
  SheetSettings beside = on("a4-5x13");
  beside.offset.right = 50;
  CHECK_FALSE(check_print(beside, ToFile{"labels.pdf"}));
}

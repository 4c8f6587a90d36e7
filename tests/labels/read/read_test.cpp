#include "labels/read/file_reader.hpp"

#include <algorithm>

#include "core/action/action.hpp"
#include "core/file/save_file.hpp"
#include "labels/cards/wall_sheet.hpp"
#include "labels/read/page_reader.hpp"
#include "labels/render/label_sheet.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"
#include "tests/labels/render/labels_for_tests.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

const PangoText text;

std::string saved_sheet(const TemporaryFolder& folder, const std::string& name, int count,
                        const std::string& stock_name, int dpi) {
  const auto sheet =
      plan_sheet(sling_labels(count), {stock(stock_name), {dpi}, {}, 0}, text).value();
  const std::string path = (folder / name).string();
  REQUIRE(save_pages(pages_of(sheet, text), "t", path, {dpi}));
  return path;
}

std::vector<Code> codes_of(const std::vector<LabelContent>& labels) {
  std::vector<Code> codes;
  for (const LabelContent& label : labels) codes.push_back(label.code);
  return codes;
}

std::vector<Code> sorted(std::vector<Code> codes) {
  std::ranges::sort(codes);
  return codes;
}

void write_pgm(const std::string& path, const GreyImage& image) {
  write_file(path, "P5\n" + std::to_string(image.width) + " " + std::to_string(image.height) +
                       "\n255\n" + std::string(image.pixels.begin(), image.pixels.end()));
}

}  // namespace

TEST_CASE("every label of a printed sheet is read from its PDF at 203, 300 and 600 dots an inch") {
  const TemporaryFolder folder;
  for (const int dpi : {203, 300, 600}) {
    const auto seen = codes_in_file(saved_sheet(folder, "labels.pdf", 70, "a4-5x13", dpi));
    REQUIRE(seen);
    INFO(dpi);
    CHECK(seen->pages == 2);
    CHECK(seen->foreign == 0);
    CHECK(sorted(seen->codes) == sorted(codes_of(sling_labels(70))));
  }
}

TEST_CASE("a full sheet of the smallest labels is read") {
  const TemporaryFolder folder;
  const auto seen = codes_in_file(saved_sheet(folder, "labels.pdf", 189, "a4-7x27", 300));
  REQUIRE(seen);
  CHECK(seen->codes.size() == 189);
}

TEST_CASE("a page is read as PNG and as PGM") {
  const TemporaryFolder folder;
  const auto sheet = plan_sheet(sling_labels(5), {stock("a5-3x9"), {203}, {}, 0}, text).value();
  const Pages pages = pages_of(sheet, text);
  REQUIRE(save_pages(pages, "t", (folder / "page.png").string(), {203}));
  write_pgm((folder / "page.pgm").string(), picture_of(pages, 0, {203}).value());
  for (const std::string name : {"page.png", "page.pgm"}) {
    const auto seen = codes_in_file(folder / name);
    REQUIRE(seen);
    CHECK(sorted(seen->codes) == sorted(codes_of(sling_labels(5))));
  }
}

TEST_CASE("a large symbol is found as well as a small one") {
  const auto sheet = plan_wall_sheet(210, 297, {600}).value();
  const auto page = picture_of(pages_of(sheet, text), 0, {600}).value();
  const PageSightings seen = read_page(page);
  CHECK(seen.codes.size() == all_actions.size());
}

TEST_CASE("codes are told by what they are for") {
  CHECK(what_it_is(numbered_code(3)) == "tub");
  CHECK(what_it_is(action_code(Action::LeftOvernight)) == "action card: left overnight");
  CHECK(what_it_is(make_code(CodeKind::Action, "RP8XG8").value()).find("later program") !=
        std::string::npos);
}

TEST_CASE("a foreign symbol is counted and its content dropped") {
  auto sheet = plan_sheet(sling_labels(1), {stock("roll-29"), {300}, {}, 0}, text).value();
  sheet.labels[0].symbol =
      encode_symbol("HTTP://A.EXAMPLE", SymbolVersion::V2, ErrorCorrection::H).value();
  const PageSightings seen = read_page(picture_of(pages_of(sheet, text), 0, {300}).value());
  CHECK(seen.codes.empty());
  CHECK(seen.foreign == 1);
}

TEST_CASE("files that hold nothing readable say what is the matter") {
  const TemporaryFolder folder;
  CHECK(codes_in_file(folder / "none.pdf").error().kind == ErrorKind::NotFound);
  write_file(folder / "cut.pdf", "%PDF-1.5\nno more");
  CHECK(codes_in_file(folder / "cut.pdf").error().kind == ErrorKind::BadInput);
  write_file(folder / "words.txt", "feed the slings");
  CHECK(codes_in_file(folder / "words.txt").error().kind == ErrorKind::BadInput);
  write_pgm((folder / "white.pgm").string(), {300, 300, std::vector<std::uint8_t>(300 * 300, 255)});
  const auto white = codes_in_file(folder / "white.pgm");
  REQUIRE(white);
  CHECK(white->codes.empty());
}

#include "core/file/save_file.hpp"
#include "labels/proof/label_proof.hpp"
#include "labels/reader/symbol_reader.hpp"
#include "labels/render/label_sheet.hpp"
#include "labels/render/paint.hpp"
#include "labels/sheet/stock_file.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"
#include "tests/labels/render/labels_for_tests.hpp"
#include "tests/peers/peers.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

const PangoText text;

bool our_reader_finds(const GreyImage& image, const Code& code) {
  for (const Sighting& sighting : read_symbols(image))
    if (sighting.code && *sighting.code == code) return true;
  return false;
}

}  // namespace

TEST_CASE("labels on every stock at 203, 300 and 600 dots an inch are read, by zbar too") {
  for (const Stock& kind : built_in_stock())
    for (const int dpi : {203, 300, 600}) {
      const auto sheet =
          plan_sheet(sling_labels(3, static_cast<unsigned>(dpi)), {kind, {dpi}, {}, 0}, text);
      REQUIRE(sheet);
      for (const PlannedLabel& label : sheet->labels) {
        const GreyImage picture = printed_picture(*sheet, label, text);
        INFO(kind.name << " at " << dpi << ": " << label.content.code.text());
        CHECK(our_reader_finds(picture, label.content.code));
        CHECK(read_by_zbar(picture).contains(std::string(label.content.code.text())));
      }
    }
}

TEST_CASE("labels of 1,000 random species and codes are all read as printed, by zbar too") {
  std::vector<LabelContent> contents = sling_labels(1000, 5000);
  for (std::size_t i = 0; i < contents.size(); ++i)
    contents[i].species = random_species(static_cast<unsigned>(i));
  int ours = 0;
  int zbars = 0;
  const auto sheet = plan_sheet(contents, {stock("a4-5x13"), {203}, {}, 0}, text);
  REQUIRE(sheet);
  for (const PlannedLabel& label : sheet->labels) {
    const GreyImage picture = printed_picture(*sheet, label, text);
    ours += our_reader_finds(picture, label.content.code) ? 1 : 0;
    zbars += read_by_zbar(picture).contains(std::string(label.content.code.text())) ? 1 : 0;
  }
  CHECK(ours == 1000);
  CHECK(zbars == 1000);
}

TEST_CASE("modules in a picture are whole dots, all black or all white") {
  for (const int dpi : {203, 300, 600}) {
    const auto sheet =
        plan_sheet(sling_labels(1), {stock("a4-5x13"), {dpi}, {0.31, 0.17}, 7}, text);
    REQUIRE(sheet);
    const PlannedLabel& label = sheet->labels[0];
    const auto image = picture_of(pages_of(*sheet, text), 0, {dpi}).value();
    const Box cell = box_of(*sheet, label);
    const int dots = label.picture.symbol.size.dots;
    const double margin = quiet_zone * label.picture.symbol.size.module;
    const auto dot = [&](double mm) {
      return static_cast<int>(std::lround(mm / Resolution{dpi}.dot()));
    };
    const int left = dot(cell.x + label.picture.symbol.x + margin);
    const int top = dot(cell.y + label.picture.symbol.y + margin);
    int wrong = 0;
    for (int y = 0; y < label.symbol.side * dots; ++y)
      for (int x = 0; x < label.symbol.side * dots; ++x)
        wrong +=
            image.at(left + x, top + y) != (label.symbol.is_dark(x / dots, y / dots) ? 0 : 255);
    CHECK(wrong == 0);
  }
}

TEST_CASE("names of any script and length can be printed") {
  std::vector<LabelContent> contents = sling_labels(5);
  contents[0].species =
      "O\xCC\x88"
      "cosmia a\xCC\x8A"
      "lba";  // combining marks
  contents[1].source = "\xD7\xA9\xD7\x81\xD7\x9C\xD7\x95\xD7\x9D \xD7\x90\xD7\x91";  // Hebrew
  contents[2].source = "\xD8\xAF\xD8\xA7\xD8\xB1 \xD8\xA7\xD9\x84";                  // Arabic
  contents[3].species = std::string(300, 'W');
  contents[4].common_name = std::string("\xFF\xFE broken \n", 10);
  for (const std::string name : {"a4-7x27", "a4-5x13", "a4-3x8", "roll-12"}) {
    const auto sheet = plan_sheet(contents, {stock(name), {300}, {}, 0}, text);
    REQUIRE(sheet);
    CHECK(pdf_of(pages_of(*sheet, text), "t").value().starts_with("%PDF-"));
    for (const PlannedLabel& label : sheet->labels) {
      CHECK(our_reader_finds(printed_picture(*sheet, label, text), label.content.code));
      for (const PlacedText& line : label.picture.texts)
        CHECK(line.x + text.width(line.face, line.text) * line.size <=
              sheet->stock.cell_width + 0.01);
    }
    CHECK(what_was_left_out(*sheet).find("species") != std::string::npos);
  }
}

TEST_CASE("an empty run, a cell that is not there and an offset off the page are refused") {
  const auto refused = [](const std::vector<LabelContent>& contents,
                          const SheetSettings& settings) {
    const auto sheet = plan_sheet(contents, settings, text);
    return !sheet && sheet.error().kind == ErrorKind::BadInput;
  };
  const Stock kind = stock("a4-5x13");
  CHECK(refused({}, {kind, {300}, {}, 0}));
  CHECK(refused(sling_labels(1), {kind, {300}, {}, 65}));
  CHECK(refused(sling_labels(1), {kind, {300}, {30, 0}, 0}));
  CHECK(refused(sling_labels(1), {kind, {300}, {0, std::nan("")}, 0}));
  CHECK_FALSE(refused(sling_labels(1), {kind, {300}, {1, -1}, 64}));
}

TEST_CASE("a full disk or a folder that is not there leaves what was there") {
  const TemporaryFolder folder;
  const auto sheet = plan_sheet(sling_labels(70), {stock("a4-5x13"), {150}, {}, 0}, text).value();
  const auto save = [&](const std::string& path) {
    return save_pages(pages_of(sheet, text), "t", path, {150});
  };
  CHECK(save_file("/dev/full", "words").error().kind == ErrorKind::Full);
  CHECK(save((folder / "no" / "labels.pdf").string()).error().kind == ErrorKind::NotFound);
  CHECK(save((folder / "labels.doc").string()).error().kind == ErrorKind::BadInput);
  const auto pictures = save((folder / "labels.png").string());
  REQUIRE(pictures);
  CHECK(pictures->size() == 2);
  CHECK(std::filesystem::exists(folder / "labels-2.png"));
  CHECK(std::distance(std::filesystem::directory_iterator(folder.path()), {}) == 2);
}

#include "labels/proof/label_proof.hpp"

#include <array>
#include <cmath>

#include "labels/proof/wear.hpp"
#include "labels/symbol/codewords.hpp"
#include "tests/frame.hpp"
#include "tests/labels/render/labels_for_tests.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

const PangoText text;

Reflectances perfect(const Symbol& symbol) {
  Reflectances list;
  for (const std::uint8_t dark : symbol.dark) list.push_back(dark != 0 ? 0.05 : 0.85);
  return list;
}

// The first `count` codewords of a perfect print with one module of each at `reflectance`.
QualityEstimate with_weak_codewords(int count, double reflectance, SymbolVersion version) {
  const Symbol symbol = make_symbol(numbered_code(7), version);
  Reflectances measured = perfect(symbol);
  const auto places = codeword_places(version);
  for (int i = 0; i < count; ++i) {
    const ModulePlace place = places[static_cast<std::size_t>(i)][3];
    const bool dark = symbol.is_dark(place.column, place.row);
    measured[static_cast<std::size_t>(place.row * symbol.side + place.column)] =
        dark ? reflectance : 0.9 - reflectance;
  }
  return estimate_quality(measured, symbol);
}

}  // namespace

TEST_CASE("grades are those of ISO/IEC 15415") {
  // Symbol contrast A at 70 %, modulation A at 50 %, unused error correction A/B/C/D at 62/50/37/25
  // %; 8 codewords of version 1-H and 14 of version 2-H can be put right (ISO/IEC 18004, table 9).
  const auto clean = with_weak_codewords(0, 0, SymbolVersion::V1);
  CHECK(clean.contrast == Approx(80));
  CHECK(clean.modulation == Approx(100));
  CHECK(clean.unused == 100);
  CHECK(clean.overall() == Grade::A);

  CHECK(with_weak_codewords(3, 0.6, SymbolVersion::V1).unused == Approx(62.5));
  CHECK(with_weak_codewords(3, 0.6, SymbolVersion::V1).unused_grade == Grade::A);
  CHECK(with_weak_codewords(4, 0.6, SymbolVersion::V1).unused_grade == Grade::B);
  CHECK(with_weak_codewords(5, 0.6, SymbolVersion::V1).unused_grade == Grade::C);
  CHECK(with_weak_codewords(6, 0.6, SymbolVersion::V1).unused_grade == Grade::D);
  CHECK(with_weak_codewords(7, 0.6, SymbolVersion::V1).unused_grade == Grade::F);
  CHECK(with_weak_codewords(7, 0.6, SymbolVersion::V2).unused == Approx(50));
  CHECK(with_weak_codewords(14, 0.6, SymbolVersion::V2).unused == 0);
}

TEST_CASE("weak codewords cost modulation only as far as error correction cannot carry them") {
  // A dark module at 0.31 with the threshold at 0.45 and contrast 0.8: 2 * 0.14 / 0.8 = 35 %, a C.
  const auto three = with_weak_codewords(3, 0.31, SymbolVersion::V1);
  CHECK(three.modulation_grade == Grade::A);  // three given up leave 62.5 % unused, an A
  CHECK(three.unused == 100);
  const auto four = with_weak_codewords(4, 0.31, SymbolVersion::V1);
  CHECK(four.modulation_grade == Grade::B);  // four leave 50 %, a B
  const auto all = with_weak_codewords(26, 0.31, SymbolVersion::V1);
  CHECK(all.modulation_grade == Grade::C);
  CHECK(all.modulation == Approx(35).margin(0.1));
}

TEST_CASE("contrast is graded, and a blank print is no symbol") {
  const Symbol symbol = make_symbol(numbered_code(7), SymbolVersion::V2);
  Reflectances pale = perfect(symbol);
  for (double& value : pale) value = 0.3 + value * 0.6;
  CHECK(estimate_quality(pale, symbol).contrast_grade == Grade::C);
  CHECK(estimate_quality(Reflectances(pale.size(), 0.5), symbol).overall() == Grade::F);
}

TEST_CASE("damage does to a picture what its name says") {
  GreyImage image{20, 20, std::vector<std::uint8_t>(400, 255)};
  for (int y = 8; y < 12; ++y)
    for (int x = 8; x < 12; ++x) image.pixels[static_cast<std::size_t>(20 * y + x)] = 0;
  const GreyImage grown = with_print_gain(image, 2);
  CHECK(std::ranges::count(grown.pixels, 0) == 8 * 8);
  const auto [dark, light] = std::ranges::minmax(paled(image, 60).pixels);
  CHECK(light - dark == 60);
  const GreyImage cut = scratched(image, {0, 10}, {20, 10}, 2);
  CHECK(std::ranges::count(cut.pixels, 0) == 4 * 2);
  CHECK(resampled(image, 40, 40).at(17, 17) == 0);
  const GreyImage bent = around_cylinder(image, 10, 8);
  CHECK(bent.at(10, 10) == 0);
  CHECK(bent.at(1, 10) < bent.at(10, 2));  // darker towards the sides
}

TEST_CASE("labels of 1,000 random species and codes outlive a normal life") {
  std::vector<LabelContent> contents = sling_labels(1000, 20'000);
  for (std::size_t i = 0; i < contents.size(); ++i)
    contents[i].species = random_species(static_cast<unsigned>(i) + 77);
  const std::vector<LabelContent> small_ones(contents.begin(), contents.begin() + 300);
  for (const auto& [name, labels] : {std::pair{"a4-5x13", contents}, {"a4-7x27", small_ones}}) {
    const auto sheet = plan_sheet(labels, {stock(name), {300}, {}, 0}, text).value();
    std::size_t as_printed = 0;
    std::size_t held = 0;
    for (const LabelProof& proof : prove_sheet(sheet)) {
      as_printed += proof.read[0] ? 1 : 0;
      held += proof.holds() ? 1 : 0;
    }
    INFO(name);
    CHECK(as_printed == labels.size());
    CHECK(held == labels.size());
  }
}

TEST_CASE("a scratch just above or below the finder patterns takes no label out of print") {
  // Of 4,800 labels with such a scratch, those that the library and our reader once failed to read.
  constexpr std::array codes{"T6MF030M", "TMGM8FW0", "TF9H4296", "TTXCDP69",
                             "T5GR5T1M", "TKAVP69K", "TV495WH0"};
  std::vector<LabelContent> contents = sling_labels(codes.size());
  for (std::size_t i = 0; i < codes.size(); ++i) {
    contents[i].code = parse_code(codes[i]).value();
    contents[i].species = "Orphnaecus philippinus";
  }
  const auto sheet = plan_sheet(contents, {stock("a4-5x13"), {300}, {}, 0}, text).value();
  for (const LabelProof& proof : prove_sheet(sheet)) {
    INFO(proof.code.text() << ": " << proof.failed_trials());
    CHECK(proof.holds());
  }
}

TEST_CASE("a label that does not read is found out, and says in which trial") {
  auto sheet = plan_sheet(sling_labels(1), {stock("a4-5x13"), {300}, {}, 0}, text).value();
  PlannedLabel& label = sheet.labels[0];
  REQUIRE(prove_sheet(sheet)[0].holds());

  SECTION("another code than the one in letters") {
    label.symbol = make_symbol(numbered_code(99), label.picture.symbol.size.version);
    CHECK_FALSE(prove_sheet(sheet)[0].holds());
  }
  SECTION("letters printed over the symbol") {
    for (int line = 0; line < 8; ++line)
      label.picture.texts.push_back({Face::TextBold, 4, 0, 3.0 + 2.2 * line, "WWWWWWWW"});
    const LabelProof proof = prove_sheet(sheet)[0];
    CHECK_FALSE(proof.holds());
    CHECK(proof.failed_trials().find("as printed") != std::string::npos);
  }
  SECTION("half of the symbol missing") {
    for (int y = label.symbol.side / 2; y < label.symbol.side; ++y)
      for (int x = 8; x < label.symbol.side; ++x)
        label.symbol.dark[static_cast<std::size_t>(y * label.symbol.side + x)] = 0;
    CHECK_FALSE(prove_sheet(sheet)[0].holds());
  }
}

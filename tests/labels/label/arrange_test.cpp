#include "labels/label/arrange.hpp"

#include <algorithm>

#include "labels/label/hazard.hpp"
#include "labels/sheet/stock.hpp"
#include "tests/frame.hpp"
#include "tests/labels/label/fixed_ruler.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

const FixedRuler ruler;

LabelContent sling() {
  LabelContent content{.code = make_code(CodeKind::Enclosure, "4K7M2X").value()};
  content.species = "Haplocosmia himalayana";
  content.source = "sac 31-4";
  content.date = parse_day("2031-04-09").value();
  content.instar = 2;
  return content;
}

bool shows(const LabelPicture& picture, const std::string& text) {
  return std::ranges::any_of(picture.texts, [&](const PlacedText& line) {
    return line.text.find(text) != std::string::npos;
  });
}

bool left_out(const LabelPicture& picture, const std::string& part) {
  return std::ranges::find(picture.left_out, part) != picture.left_out.end();
}

Box box_of(const PlacedText& line) {
  return {line.x, line.y - baseline_ems * line.size, ruler.width(line.face, line.text) * line.size,
          line.size * line_ems};
}

bool overlap(const Box& a, const Box& b) {
  constexpr double touch = 1e-4;
  return a.x + a.width > b.x + touch && b.x + b.width > a.x + touch &&
         a.y + a.height > b.y + touch && b.y + b.height > a.y + touch;
}

std::string any_name() {
  std::string name;
  const auto words = *rc::gen::inRange(1, 4);
  for (int word = 0; word < words; ++word) {
    const auto letters = *rc::gen::inRange(2, *rc::gen::element(6, 16, 40));
    for (int i = 0; i < letters; ++i)
      name += static_cast<char>((word == 0 && i == 0 ? 'A' : 'a') + *rc::gen::inRange(0, 26));
    name += ' ';
  }
  name.pop_back();
  return name;
}

LabelContent any_content() {
  LabelContent content = sling();
  content.species = any_name();
  content.source = *rc::gen::inRange(0, 3) == 0 ? "" : any_name();
  content.common_name = *rc::gen::inRange(0, 2) == 0 ? "" : any_name();
  content.hazard =
      *rc::gen::element(Hazard::None, Hazard::Venom, Hazard::Hairs, Hazard::VenomAndHairs);
  if (*rc::gen::inRange(0, 3) == 0) content.date.reset();
  return content;
}

}  // namespace

TEST_CASE("nothing on a label overlaps, leaves it, or stands in the quiet zone") {
  rc::prop("any content at any size", [] {
    const double width = 8 + *rc::gen::inRange(0, 900) / 10.0;
    const double height = 8 + *rc::gen::inRange(0, 500) / 10.0;
    const Resolution resolution{*rc::gen::element(203, 300, 600)};
    const auto picture = arrange(any_content(), width, height, resolution, ruler);
    RC_PRE(picture.has_value());
    const double side = picture->symbol.size.side();
    std::vector<Box> boxes{{picture->symbol.x, picture->symbol.y, side, side}};
    for (const PlacedText& line : picture->texts) boxes.push_back(::box_of(line));
    for (std::size_t i = 0; i < boxes.size(); ++i) {
      RC_ASSERT(boxes[i].x >= -1e-6);
      RC_ASSERT(boxes[i].y >= -1e-6);
      RC_ASSERT(boxes[i].x + boxes[i].width <= width + 1e-4);
      RC_ASSERT(boxes[i].y + boxes[i].height <= height + 1e-4);
      for (std::size_t j = 0; j < i; ++j) RC_ASSERT_FALSE(overlap(boxes[i], boxes[j]));
    }
  });
}

TEST_CASE("every part is on the label, or said to be left out, or cut with a mark") {
  rc::prop("any content at any size", [] {
    const LabelContent content = any_content();
    const auto picture =
        arrange(content, 9 + *rc::gen::inRange(0, 60), 9 + *rc::gen::inRange(0, 40), {300}, ruler);
    RC_PRE(picture.has_value());
    if (content.date && !left_out(*picture, "date")) RC_ASSERT(shows(*picture, "2031-04-09"));
    if (!content.source.empty() && !left_out(*picture, "source")) {
      const bool cut = left_out(*picture, "end of the source");
      RC_ASSERT(shows(*picture, cut ? "\xE2\x80\xA6" : content.source));
    }
    if (content.hazard != Hazard::None)
      RC_ASSERT(picture->warning.has_value() != left_out(*picture, "warning"));
    if (!left_out(*picture, "code in letters"))
      RC_ASSERT(shows(*picture, content.code.grouped().substr(0, 4)));
  });
}

TEST_CASE("a symbol of version 2 where 13 mm fit, of version 1 below") {
  for (const int dpi : {203, 300, 600}) {
    const Resolution resolution{dpi};
    CHECK(best_symbol(12.99, resolution)->version == SymbolVersion::V1);
    CHECK(best_symbol(13.0, resolution)->version == SymbolVersion::V2);
    for (double room = 7.5; room < 25; room += 0.1) {
      const auto size = best_symbol(room, resolution);
      if (!size) continue;
      CHECK(size->side() <= room + 1e-6);
      CHECK(size->module == Approx(size->dots * 25.4 / dpi));
      CHECK(size->module >= 0.249);
    }
  }
}

TEST_CASE("modules are the whole dots that printers of the trade make of them") {
  // 203 dpi: 3 or 4 dots are 0.375 or 0.5 mm; 300 dpi: 4 or 5 are 0.339 or 0.423; 600 dpi: 6 or 8
  // are 0.254 or 0.339 (25.4 mm an inch).
  const auto size = [](double room, int dpi) {
    return *largest_symbol(SymbolVersion::V1, room, {dpi});
  };
  CHECK(size(11.0, 203).dots == 3);
  CHECK(size(11.0, 203).module == Approx(0.375).margin(0.001));
  CHECK(size(14.6, 203).module == Approx(0.5).margin(0.001));
  CHECK(size(9.9, 300).module == Approx(0.339).margin(0.001));
  CHECK(size(12.3, 300).module == Approx(0.423).margin(0.001));
  CHECK(size(7.4, 600).module == Approx(0.254).margin(0.001));
  CHECK(size(9.9, 600).module == Approx(0.339).margin(0.001));
}

TEST_CASE("a label too small for any symbol is refused with what it would take") {
  for (const double side : {7.2, 3.0, 0.1}) {
    const auto picture = arrange(sling(), 40, side, {300}, ruler);
    REQUIRE_FALSE(picture);
    CHECK(picture.error().kind == ErrorKind::BadInput);
    CHECK(picture.error().sentence.find("too small for any symbol") != std::string::npos);
    CHECK(picture.error().sentence.find("7.4 mm") != std::string::npos);
  }
  CHECK(arrange(sling(), 10, 10, {300}, ruler).has_value());
}

TEST_CASE("the least needed is left out first") {
  LabelContent content = sling();
  content.common_name = "Himalayan";
  content.hazard = Hazard::Venom;
  std::size_t before = 99;
  for (const double height : {8.5, 10.0, 12.0, 15.0, 21.0}) {
    const auto picture = arrange(content, 30, height, {300}, ruler);
    REQUIRE(picture);
    CHECK(picture->left_out.size() <= before);
    before = picture->left_out.size();
    if (left_out(*picture, "date")) CHECK(left_out(*picture, "common name"));
    if (left_out(*picture, "species")) CHECK(left_out(*picture, "source"));
    if (left_out(*picture, "warning")) CHECK(left_out(*picture, "species"));
    CHECK(shows(*picture, content.code.grouped()));
  }
  CHECK(before == 0);
}

TEST_CASE("a species is whole where it fits and abbreviated where it does not") {
  CHECK(shows(*arrange(sling(), 64, 34, {300}, ruler), "Haplocosmia"));
  const auto small = arrange(sling(), 25.4, 10, {300}, ruler);
  CHECK(shows(*small, "H. himalayana"));
  LabelContent content = sling();
  content.species = "Haplocosmia " + std::string(300, 'x');
  const auto cut = arrange(content, 38, 21, {300}, ruler);
  CHECK(shows(*cut, "\xE2\x80\xA6"));
  CHECK(left_out(*cut, "end of the species"));
}

TEST_CASE("genera known for their venom or hairs carry a warning") {
  // Ahmed, Pinkham & Warrell 2009, QJM 102:851-857, describe bites by the first; Cooke, Roth &
  // Miller 1972, Amer. Mus. Novitates 2498, the hairs of the second (both cited from memory).
  CHECK(hazard_of("Poecilotheria regalis") == Hazard::Venom);
  CHECK(hazard_of("Theraphosa blondi") == Hazard::Hairs);
  CHECK(hazard_of("Haplocosmia himalayana") == Hazard::None);
  CHECK(hazard_of("") == Hazard::None);
  LabelContent content = sling();
  content.hazard = Hazard::Venom;
  const auto picture = arrange(content, 38, 21, {300}, ruler);
  CHECK(picture->warning);
  CHECK(shows(*picture, "venom"));
}

#include <algorithm>
#include <set>
#include <sstream>

#include "core/care/cautions.hpp"
#include "core/code/code_of_name.hpp"
#include "labels/cards/caution_block.hpp"
#include "labels/cards/name_cards.hpp"
#include "labels/cards/wall_sheet.hpp"
#include "labels/reader/symbol_reader.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"
#include "tests/labels/render/paper.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

const PangoText text;

GreyImage part_of(const GreyImage& page, const Box& box, Resolution resolution) {
  const auto dot = [&](double mm) { return static_cast<int>(mm / resolution.dot()); };
  GreyImage part{dot(box.width), dot(box.height), {}};
  for (int y = 0; y < part.height; ++y)
    for (int x = 0; x < part.width; ++x)
      part.pixels.push_back(page.at(dot(box.x) + x, dot(box.y) + y));
  return part;
}

std::string one_line(const std::string& page) {
  std::istringstream in(page);
  std::string words;
  for (std::string word; in >> word;) words += (words.empty() ? "" : " ") + word;
  return words;
}

}  // namespace

TEST_CASE("the wall sheet has a card for everything that can be recorded, and each reads") {
  struct Paper {
    double width, height;
  };
  for (const Paper paper : {Paper{210, 297}, Paper{148, 210}, Paper{215.9, 279.4}}) {
    const Resolution resolution{300};
    const auto sheet = plan_wall_sheet(paper.width, paper.height, resolution);
    REQUIRE(sheet);
    const auto page = picture_of(pages_of(*sheet, text), 0, resolution).value();
    std::set<Action> actions;
    for (const PlacedCard& card : sheet->cards) {
      const auto seen = read_symbols(part_of(page, card.box, resolution));
      INFO(action_word(card.action) << " on " << paper.width);
      REQUIRE(seen.size() == 1);
      REQUIRE(seen[0].code);
      CHECK(action_from_code(*seen[0].code) == card.action);
      CHECK((card.box.x >= 0 && card.box.x + card.box.width <= paper.width));
      CHECK((card.box.y >= 0 && card.box.y + card.box.height <= paper.height));
      actions.insert(card.action);
    }
    CHECK(actions.size() == all_actions.size());
  }
}

TEST_CASE("symbols on the wall are further apart than a scanner sees by mistake") {
  const auto sheet = plan_wall_sheet(210, 297, {300}).value();
  for (const PlacedCard& a : sheet.cards)
    for (const PlacedCard& b : sheet.cards) {
      if (a.action == b.action) continue;
      const double side = a.module * side_of(SymbolVersion::V2);
      const double apart =
          std::max(std::abs(a.symbol_x - b.symbol_x), std::abs(a.symbol_y - b.symbol_y)) - side;
      CHECK(apart >= 15);
    }
}

TEST_CASE("the wall sheet says at its bottom what can hurt somebody") {
  for (const double width : {210.0, 148.0, 215.9}) {
    const double height = width == 215.9 ? 279.4 : width * 297 / 210;
    const auto sheet = plan_wall_sheet(width, height, {300}).value();
    const std::string said =
        one_line(text_on_paper(pdf_of(pages_of(sheet, text), "cards").value(), 0));
    for (const std::string& caution : general_cautions()) {
      INFO(caution << " on a page " << width << " mm wide");
      CHECK(said.find(caution) != std::string::npos);
    }
    const CautionBlock block = fit_cautions(sheet.cautions, text);
    CHECK(block.size >= 2);  // about six points, as on a medicine's leaflet
    CHECK(sheet.cautions.y + sheet.cautions.height <= height - 5);
    for (const PlacedCard& card : sheet.cards)
      CHECK(card.box.y + card.box.height <= sheet.cautions.y + 1e-9);
  }
}

TEST_CASE("a page too small for cards is refused") {
  CHECK(plan_wall_sheet(60, 80, {300}).error().kind == ErrorKind::BadInput);
}

TEST_CASE("shelves are those where a tub stands, in walking order, once each") {
  std::vector<Event> events;
  const auto tub = [&](int number, Place place) {
    Event event = make_event(number, number, animal_number(1), EnclosureAdded{std::move(place)});
    event.animal.reset();
    event.enclosure = tub_number(number);
    events.push_back(event);
  };
  tub(1, {"A", "10", "1"});
  tub(2, {"A", "2", "1"});
  tub(3, {"A", "2", "2"});
  tub(4, {"B", "", "1"});
  tub(5, {});
  const auto shelves = shelves_in(fold_collection(events));
  CHECK(shelves == std::vector<ShelfName>{{"A", "2"}, {"A", "10"}, {"B", ""}});
  CHECK(shelf_label(shelves[0]).code == code_of_shelf("A", "2"));
  CHECK(shelf_label(shelves[0]).species == "rack A, shelf 2");
  CHECK(badge("Noor").code == code_of_name(CodeKind::Person, "Noor"));
}

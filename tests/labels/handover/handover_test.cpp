// The handover sheet, as Poppler reads it from the PDF, beside the plan it was made from.

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "core/care/cautions.hpp"
#include "core/code/code_of_name.hpp"
#include "core/words/dates.hpp"
#include "labels/handover/handover_sheet.hpp"
#include "labels/handover/return_sheet.hpp"
#include "labels/reader/symbol_reader.hpp"
#include "tests/core/cover/away_room.hpp"
#include "tests/labels/render/paper.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

const PangoText text;
const Resolution resolution{300};
const Code badge = code_of_name(CodeKind::Person, "Noor");

struct Size {
  double width, height;
};
const std::vector<Size> sizes{{210, 297}, {215.9, 279.4}, {148, 210}};

// Blanks and line ends are where a line happened to end.
std::string joined(std::string words) {
  std::erase_if(words, [](unsigned char c) { return std::isspace(c) != 0; });
  return words;
}

// All pages in one, without their feet.
std::string read_back(const std::string& pdf, const std::string& foot) {
  std::string all;
  for (int page = 0; page < paper_size(pdf).pages; ++page) {
    std::string words = joined(text_on_paper(pdf, page));
    const auto begin = words.rfind(joined(foot));
    if (begin != std::string::npos) words.erase(begin);
    all += words;
  }
  return all;
}

AwayRoom full_room() {
  AwayRoom room;
  const std::vector<std::string> species{"Haplocosmia himalayana", "Omothymus violaceopes",
                                         "Ephebopus cyanognathus", "Neoholothele incei"};
  for (int i = 0; i < 40; ++i) {
    room.tub(i, {i < 20 ? "A" : "B", std::to_string(i % 20 / 5 + 1), std::to_string(i % 5 + 1)},
             {.species = species[static_cast<std::size_t>(i % 4)], .stage = Stage::Juvenile});
    room.happened(1 + i % 9, i, Offered{.prey = i % 3 ? "cricket" : "roach"});
    room.happened(1 + i % 5, i, Misted{});
  }
  room.happened(0.1, 7, Looked{{Sign::OnItsBack}});
  for (int i = 0; i < 40; i += 3) {
    room.believed_ahead(i, [&](double day) { return std::min(0.9, 0.02 * i + 0.03 * day); });
    for (Forecast& forecast : room.outlook.forecasts[animal_number(i)])
      for (std::size_t q = 0; q < moult_quantiles; ++q)
        forecast.next_moult[q] = static_cast<double>(q) + i % 10;
  }
  room.book.contacts = {{ContactKind::Keeper, "Wiebke", "0170 1234567", ""},
                        {ContactKind::Emergency, "Giftnotruf Süd", "112", "Bei jedem Biss."}};
  room.book.notes = {{event_number(1), tub_number(2), "", "She bites the forceps."},
                     {event_number(2), std::nullopt, "", "The door sticks: push hard."}};
  return room;
}

struct Sheet {
  AwayRoom room = full_room();
  CoverPlan plan = room.planned(AwayRoom::cover(0, 9));
  Flow flow;
  std::string pdf;
  explicit Sheet(Size size)
      : flow(handover_sheet(plan, room.collection(), badge, size.width, size.height, resolution,
                            text)),
        pdf(pdf_of(pages_of(flow, text), "handover").value()) {}
};

}  // namespace

TEST_CASE("every line of the plan stands on paper, under its day and in its order") {
  for (const Size size : sizes) {
    const Sheet sheet(size);
    const std::string all = read_back(sheet.pdf, sheet.flow.foot);
    std::size_t at = all.find(joined("A moult may be met"));
    REQUIRE(at != std::string::npos);
    for (const CoverDay& day : sheet.plan.days) {
      at = all.find(joined(long_day_words(day.day) + "Rack "), at);
      INFO(long_day_words(day.day) << " on paper " << size.width << " wide");
      REQUIRE(at != std::string::npos);
      for (const CoverLine& line : day.visits) {
        std::string said = line.enclosure->grouped() + "·" + line.name + line.words;
        for (const std::string& also : line.also) said += also;
        if (!line.only.empty()) said += "Only " + line.only + ".";
        if (!line.otherwise.empty()) said += line.otherwise + ".";
        if (line.caution) said += "Careful: " + *line.caution;
        INFO(said);
        at = all.find(joined(said), at);
        REQUIRE(at != std::string::npos);
      }
      const auto next = all.find(joined("Do not open in"), at);
      for (const CoverLine& line : day.keep_closed) {
        const auto found = all.find(joined(line.enclosure->grouped()), next);
        CHECK(found != std::string::npos);
      }
    }
  }
}

TEST_CASE("whom to call, the keeper's words, the basics and the cautions stand on paper") {
  for (const Size size : sizes) {
    const Sheet sheet(size);
    const std::string all = read_back(sheet.pdf, sheet.flow.foot);
    const auto stands = [&](const std::string& words) {
      INFO(words << " on paper " << size.width << " wide");
      CHECK(all.find(joined(words)) != std::string::npos);
    };
    stands("Wiebke: 0170 1234567");
    stands("Whenever you are not sure.");
    stands("Giftnotruf Süd: 112 Bei jedem Biss.");
    stands("The door sticks: push hard.");
    stands("She bites the forceps.");
    for (const std::string& sentence : assistant_basics()) stands(sentence);
    for (const std::string& sentence : general_cautions()) stands(sentence);
    for (const Danger& danger : sheet.plan.dangers) stands(danger.sentence);
    REQUIRE(sheet.plan.moults.size() > 3);
    for (const TubRemark& moult : sheet.plan.moults)
      stands(moult.enclosure->grouped() + "·" + moult.name + moult.sentence);
  }
}

TEST_CASE("the badge and every tub's code can be scanned from the sheet") {
  for (const Size size : {sizes[0], sizes[1]}) {
    const Sheet sheet(size);
    std::set<Code> seen;
    for (int page = 0; page < static_cast<int>(sheet.flow.pages.size()); ++page) {
      const auto& symbols = sheet.flow.pages[static_cast<std::size_t>(page)].symbols;
      if (symbols.empty()) continue;
      for (const FlowSymbol& symbol : symbols) {
        const double quiet = quiet_zone * symbol.size.module;
        const Box box{symbol.x - quiet, symbol.y - quiet, symbol.size.side(), symbol.size.side()};
        const auto found = read_symbols(seen_on_paper(sheet.pdf, page, box, 300));
        REQUIRE(found.size() == 1);
        REQUIRE(found[0].code);
        CHECK(*found[0].code == symbol.code);
        seen.insert(symbol.code);
      }
    }
    CHECK(seen.contains(badge));
    for (const TubRemark& tub : sheet.plan.tubs) CHECK(seen.contains(*tub.enclosure));
  }
}

TEST_CASE("nothing on the sheet is too small for an arm's length or leaves the page") {
  for (const Size size : sizes) {
    const Sheet sheet(size);
    for (const FlowPage& page : sheet.flow.pages) {
      for (const FlowText& line : page.texts) {
        INFO(line.text);
        CHECK(line.size >= 3.4);
        CHECK(line.x + line.size * text.width(line.face, line.text) <= size.width - 10);
        CHECK(line.y <= size.height - 10);
      }
      // Two lines may not stand on one another.
      for (const FlowText& a : page.texts)
        for (const FlowText& b : page.texts)
          if (&a < &b && std::abs(a.x - b.x) < 1)
            CHECK(std::abs(a.y - b.y) >= 0.9 * std::min(a.size, b.size));
    }
  }
}

TEST_CASE("the report on a cover stands on paper as it is told") {
  TubReturn tub{.animal = animal_number(1), .enclosure = tub_number(1), .place = {"A", "2", "3"}};
  tub.name = "Neoholothele incei";
  tub.duties = {{Task::Offer, AwayRoom::day(0), Fate::Done, AwayRoom::day(3)},
                {Task::LookForShed, AwayRoom::day(4), Fate::NotDone, AwayRoom::day(4)}};
  tub.flags = {{AwayRoom::day(2), "hangs on the lid", "n.png"}};
  const ReturnReport report = report_return(AwayRoom::cover(0, 9), {tub},
                                            days_until(AwayRoom::now(), AwayRoom::day(9)), {});
  const Flow flow = return_sheet(report, 210, 297, resolution, text);
  const std::string all = read_back(pdf_of(pages_of(flow, text), "report").value(), flow.foot);
  for (const std::string& sentence : return_summary(report))
    CHECK(all.find(joined(sentence)) != std::string::npos);
  for (const std::string& sentence : return_sentences(tub))
    CHECK(all.find(joined(sentence)) != std::string::npos);
  CHECK(return_sentences(tub).size() == 3);
}

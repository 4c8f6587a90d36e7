// Who is there, who may work here, and one of them with their badge.

#include <algorithm>
#include <cmath>

#include "core/people/people.hpp"
#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/people_view.hpp"
#include "labels/symbol/symbol.hpp"

namespace rackside::kiosk {
namespace {

double row_height(const Composer& composer) { return composer.mm(least_target_mm); }

// One person a row; touching it does what `intent` says.
template <class MakeIntent>
void rows(Composer& composer, Box box, const std::vector<PersonLine>& lines, int wanted,
          MakeIntent intent) {
  const double height = row_height(composer);
  const Pages pages = pages_of(lines.size(), rows_in(box, height), wanted);
  page_keys(composer, box, pages);
  const std::size_t end = std::min(lines.size(), pages.first + pages.rows);
  for (std::size_t i = pages.first; i < end; ++i) {
    named_row(composer, box.take_top(height),
              {lines[i].name, lines[i].detail, intent(lines[i].name), Face::Bold,
               lines[i].welcome ? Ink::Text : Ink::Soft});
  }
}

// Nobody works here yet.
void invitation(Composer& composer, Box& box) {
  key_row(composer, box, {{"set up a keeper", Ask{AskPerson{Role::Keeper}}, Weight::First}});
  composer.paragraph(box,
                     "Nobody is set up to work here, so everything is open to everybody. With a "
                     "keeper and a PIN, assistants can be added who record under their own names "
                     "and leave setup, deaths and other people's entries alone.",
                     composer.style(Step::Instruction), 6);
}

void people_keys(Composer& composer, Box& box) {
  const std::vector<KeyRow> adding{{"new assistant", Ask{AskPerson{Role::Assistant}}},
                                   {"new keeper", Ask{AskPerson{Role::Keeper}}}};
  const std::vector<KeyRow> others{{"new PIN", ChangePin{}}, {"step aside", StepAside{}}};
  if (composer.panel().portrait()) {
    key_row(composer, box, others);
    return key_row(composer, box, adding);
  }
  std::vector<KeyRow> all = adding;
  all.insert(all.end(), others.begin(), others.end());
  key_row(composer, box, all);
}

// Dark on light in every palette, or no scanner reads it.
void symbol(Composer& composer, Box box, const Code& code, PaletteName name) {
  const bool paper_is_light = name == PaletteName::Day;
  const Ink light = paper_is_light ? Ink::Paper : Ink::Text;
  const Ink dark = paper_is_light ? Ink::Text : Ink::Paper;
  const Symbol modules = make_symbol(code, SymbolVersion::V1);
  const int across = full_side_of(SymbolVersion::V1);
  const double module = std::floor(std::min(box.width, box.height) / across);
  const double side = module * across;
  const Box paper{box.x, box.y, side, side};
  composer.fill(paper, light);
  for (int y = 0; y < modules.side; ++y)
    for (int x = 0; x < modules.side; ++x)
      if (modules.is_dark(x, y))
        composer.fill({paper.x + (x + quiet_zone) * module, paper.y + (y + quiet_zone) * module,
                       module, module},
                      dark);
}

}  // namespace

void compose_who(Composer& composer, const Model& model) {
  Box box = page(composer);
  heading(composer, box, "Who is there?", "scan your badge, or touch your name");
  notice_line(composer, box, telling(model));
  rows(composer, box, view_welcome(model), model.list_page,
       [](const std::string& name) { return PickPerson{name}; });
}

void compose_people(Composer& composer, const Model& model) {
  Box box = page(composer);
  heading(composer, box, "People", model.by.empty() ? "" : model.by + " is at the kiosk");
  notice_line(composer, box, telling(model));
  if (model.people.nobody()) return invitation(composer, box);
  people_keys(composer, box);
  rows(composer, box, view_people(model), model.list_page,
       [](const std::string& name) { return OpenPerson{name}; });
}

void compose_person(Composer& composer, const Model& model) {
  const PersonLine person = view_person(model);
  const Code badge = badge_of(person.name);
  Box box = page(composer);
  heading(composer, box, person.name, person.detail);
  if (person.welcome)
    key_row(composer, box,
            {{"print badge", PrintBadge{}, Weight::First}, {"end their access", EndAccess{}}});
  else
    key_row(composer, box, {{"give access again", GiveAccess{}, Weight::First}});
  notice_line(composer, box, telling(model));
  const double side = std::min({box.height, box.width * 0.45, composer.mm(60)});
  Box left = box.take_left(side);
  symbol(composer, {left.x, left.y, side, side}, badge, model.settings.palette);
  box.take_left(composer.mm(5));
  const Style code = style_with_capital(5.2, Face::Code, composer.panel(), composer.metrics());
  composer.text(box.take_top(composer.line_height(code)), badge.grouped(), code);
  box.take_top(composer.mm(gap_mm));
  composer.paragraph(box,
                     "The code of the badge, printed with the name as labels are set up. It is no "
                     "secret and opens nothing that needs the PIN.",
                     composer.style(Step::Record), 6, Ink::Soft);
}

}  // namespace rackside::kiosk

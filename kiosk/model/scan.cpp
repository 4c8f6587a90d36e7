#include <fmt/format.h>

#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

Effects on_action_card(Model& model, const Code& code, const Stamp& stamp) {
  const auto action = action_from_code(code);
  if (!action) {
    tell(model, Tone::Problem,
         "This card is from a later version of the wall sheet. Nothing was recorded.");
    return {};
  }
  return record(model, *action, stamp);
}

}  // namespace

Effects on_code(Model& model, std::string_view text, const Stamp& stamp) {
  const auto code = parse_code(text);
  if (!code) {
    tell(model, Tone::Problem, code.error().sentence);
    return {};
  }
  switch (code->kind()) {
    case CodeKind::Enclosure: return open_tub(model, *code);
    case CodeKind::Action: return on_action_card(model, *code, stamp);
    case CodeKind::Person: return on_badge(model, *code, stamp);
    case CodeKind::Shelf: return open_shelf(model, *code);
  }
  return {};
}

Effects open_tub(Model& model, const Code& code) {
  const EnclosureState* enclosure = model.collection.enclosure(code);
  if (enclosure == nullptr) {
    // Another program may have added it since: labels for a new batch, an import.
    model.awaited = code;
    tell(model, Tone::Tell, fmt::format("Looking for {} in the log ...", code.grouped()));
    return {LoadRoster{}};
  }
  model.awaited.reset();
  model.last_tub = code;
  model.map.shelf.reset();
  model.notice.reset();
  model.undo.reset();
  go_to(model, ScreenName::Tub);
  model.tub = TubPage{.code = code};
  return show_resident(model, 0);
}

Effects show_resident(Model& model, std::size_t index) {
  TubPage& page = *model.tub;
  const EnclosureState* enclosure = model.collection.enclosure(page.code);
  page.animal.reset();
  page.history.reset();
  page.density.reset();
  if (!enclosure->residents.empty()) {
    page.shown = index % enclosure->residents.size();
    page.animal = enclosure->residents[page.shown];
  } else {
    page.animal = enclosure->last_resident;
  }
  if (!page.animal) return {};
  const auto forecast = model.forecasts.find(*page.animal);
  if (forecast != model.forecasts.end()) page.tiles_for = forecast->second.phase;
  return {LoadHistory{page.code, *page.animal}};
}

}  // namespace rackside::kiosk

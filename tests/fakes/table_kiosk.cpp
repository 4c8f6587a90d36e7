#include "tests/fakes/table_kiosk.hpp"

#include "core/overview/return_reading.hpp"
#include "core/overview/round_so_far.hpp"
#include "tests/generators/events.hpp"

namespace rackside::tests {
TableKiosk::TableKiosk() : log(kiosk_number(1)), clock(at_hour(24 * 40 + 20).moment), ids_(1000) {}

Code TableKiosk::house(int number, const std::string& species, Place place) {
  const Code tub = tub_number(number);
  const AnimalId animal{ids_.next()};
  animals_.emplace(tub, animal);
  const When when = at_hour(0);
  append(Draft{.id = ids_.next_event(),
               .by = {},
               .when = when,
               .animal = {},
               .enclosure = tub,
               .details = EnclosureAdded{std::move(place)},
               .note = {}});
  append(Draft{.id = ids_.next_event(),
               .by = {},
               .when = when,
               .animal = animal,
               .enclosure = tub,
               .details = AnimalAdded{.key = "k" + std::to_string(number), .species = species},
               .note = {}});
  return tub;
}

void TableKiosk::happened(const Code& tub, double days_ago, Details details) {
  const Moment now = clock.now();
  const auto before = std::chrono::milliseconds{static_cast<std::int64_t>(days_ago * 86'400'000)};
  append(Draft{.id = ids_.next_event(),
               .by = "keeper",
               .when = When{Moment{now.utc - before, now.offset}, Precision::Exact},
               .animal = animals_.at(tub),
               .enclosure = tub,
               .details = std::move(details),
               .note = {}});
}

void TableKiosk::sets(Details details) {
  append(Draft{.id = ids_.next_event(),
               .by = "keeper",
               .when = When{clock.now(), Precision::Exact},
               .animal = {},
               .enclosure = {},
               .details = std::move(details),
               .note = {}});
}

void TableKiosk::works_here(const std::string& name, Role role, std::optional<Day> until) {
  append(Draft{.id = ids_.next_event(),
               .by = name,
               .when = at_hour(1),
               .animal = {},
               .enclosure = {},
               .details = PersonAdded{name, role, until},
               .note = {}});
}

void TableKiosk::append(Draft draft) {
  const auto written = log.append({std::move(draft)}, clock.now().utc);
  if (!written) throw std::runtime_error(written.error().sentence);
}

void TableKiosk::start() {
  auto [model, effects] = kiosk::begin("keeper", clock.now());
  model_ = std::move(model);
  for (const auto& effect : effects) run(effect);
}

void TableKiosk::does(const kiosk::Intent& intent) {
  const EventId first = ids_.next_event();
  auto [model, effects] =
      kiosk::update(std::move(model_), intent, {clock.now(), first, ids_.next_event()});
  model_ = std::move(model);
  for (const auto& effect : effects) {
    if (effects_wait)
      waiting_.push_back(effect);
    else
      run(effect);
  }
}

void TableKiosk::run_waiting() {
  for (const auto& effect : std::exchange(waiting_, {})) run(effect);
}

void TableKiosk::run(const kiosk::Effect& effect) {
  struct Run {
    TableKiosk& table;

    void operator()(const kiosk::SaveDrafts& e) const {
      table.does(kiosk::Saved{e.drafts, table.log.append(e.drafts, table.clock.now().utc)});
    }
    void operator()(const kiosk::SaveWithPicture& e) const {
      Draft draft = e.draft;
      if (table.picture) std::get<Flagged>(draft.details).picture = *table.picture;
      table.does(kiosk::Saved{{draft},
                              table.log.append({draft}, table.clock.now().utc),
                              table.picture ? std::string{} : table.picture.error().sentence});
    }
    void operator()(const kiosk::LoadRoster&) const {
      table.does(kiosk::RosterLoaded{read_roster(table.log)});
    }
    void operator()(const kiosk::LoadOverview&) const {
      const auto overview =
          read_overview(table.log, table.forecaster_, table.clock.now(), Until::Everything).value();
      table.does(kiosk::OverviewReady{overview, read_round(table.log, overview).value()});
    }
    void operator()(const kiosk::LoadHistory& e) const {
      table.does(kiosk::HistoryLoaded{e.tub, e.animal, table.log.read_animal(e.animal)});
    }
    void operator()(const kiosk::ForecastAnimal& e) const {
      if (const auto one = table.forecaster_.one(e.events, table.clock.now()))
        table.does(kiosk::ForecastReady{one->forecast, one->density});
    }
    void operator()(const kiosk::TidyLog&) const {}
    void operator()(const kiosk::WatchCamera&) const {}
    void operator()(const kiosk::FindCameras&) const {}
    void operator()(const kiosk::MakeBatch& e) const {
      table.does(kiosk::TubsMade{
          make_batch(table.log, e.request, table.ids_, table.clock).map([](const Batch& made) {
            return made.tubs;
          })});
    }
    void operator()(const kiosk::PrintLabels& e) const {
      table.labels_wanted.push_back(e);
      table.does(kiosk::LabelsPrinted{table.label_outcome});
    }
    void operator()(const kiosk::PrintBadgeOf& e) const {
      table.badges_wanted.push_back(e.name);
      table.does(kiosk::LabelsPrinted{table.label_outcome});
    }
    void operator()(const kiosk::ForeseeCover& e) const {
      const auto read = read_cover_plan(table.log, {{}, e.cover}, table.clock.now(), e.wording);
      table.does(kiosk::CoverForeseen{e.cover, read.map([](const CoverReading& reading) {
                                        const CoverPlan& plan = reading.plan;
                                        return kiosk::CoverBrief{
                                            supplies_for(plan.days, reading.overview.collection,
                                                         plan.margin, plan.wording),
                                            plan.moults};
                                      })});
    }
    void operator()(const kiosk::TellReturn& e) const {
      const auto read = read_return(table.log, {{}, e.cover}, table.clock.now(), e.wording);
      table.does(kiosk::ReturnTold{
          e.cover, read.map([](const ReturnReading& reading) { return reading.report; })});
    }
    void operator()(const kiosk::PrintHandover& e) const {
      table.sheets_wanted.push_back(e.cover);
      table.does(kiosk::SheetPrinted{table.sheet_outcome});
    }
    void operator()(const kiosk::PrintReturn& e) const {
      table.sheets_wanted.push_back(e.report.cover.id);
      table.does(kiosk::SheetPrinted{table.sheet_outcome});
    }
    void operator()(const kiosk::FindPrinters&) const { table.does(table.printers); }
    void operator()(const kiosk::KeepSettings&) const {
      table.does(kiosk::SettingsKept{table.settings_not_kept});
    }
    void operator()(const kiosk::FindPin&) const {
      table.does(kiosk::PinFound{table.pin.is_set()});
    }
    void operator()(const kiosk::CheckPin& e) const {
      table.does(kiosk::PinChecked{table.pin.check(e.pin)});
    }
    void operator()(const kiosk::KeepPin& e) const {
      const auto kept = table.pin.set(e.pin);
      table.does(kiosk::PinKept{kept ? std::nullopt : std::optional(kept.error())});
    }
    void operator()(const kiosk::FindFiles&) const {
      table.does(kiosk::FilesFound{table.record_files});
    }
    void operator()(const kiosk::ReadFile& e) const {
      table.does(kiosk::FileLookedInto{e.path, table.record_counts});
    }
    void operator()(const kiosk::WriteFile&) const { table.writes_a_file = true; }
    void operator()(const kiosk::StopWriting&) const { table.writes_a_file = false; }
    void operator()(const kiosk::Quit&) const { table.has_quit = true; }
  };
  std::visit(Run{*this}, effect);
}

std::vector<std::string> TableKiosk::log_of(const Code& tub) {
  std::vector<std::string> kinds;
  const auto events = standing(log.read_animal(animals_.at(tub)).value());
  for (const Event& event : events)
    if (!std::holds_alternative<AnimalAdded>(event.details))
      kinds.emplace_back(kind_name(event.details));
  return kinds;
}

}  // namespace rackside::tests

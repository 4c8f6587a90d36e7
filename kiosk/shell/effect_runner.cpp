#include "kiosk/shell/effect_runner.hpp"

#include <tuple>

#include "core/overview/round_so_far.hpp"
#include "kiosk/shell/label_press.hpp"
#include "labels/batch/batch.hpp"
#include "labels/batch/label_contents.hpp"
#include "labels/cards/name_cards.hpp"

namespace rackside::kiosk {

void EffectRunner::run(const Effect& effect) {
  struct Run {
    EffectRunner& runner;

    void operator()(const SaveDrafts& e) const {
      runner.writing_.add([&r = runner, e] { r.save(e); });
    }
    void operator()(const SaveWithPicture& e) const {
      runner.writing_.add([&r = runner, e, picture = runner.needs_.camera.newest_picture()] {
        r.save_with_picture(e.draft, picture);
      });
    }
    void operator()(const LoadRoster&) const {
      runner.writing_.add(
          [&r = runner] { r.needs_.results.post(RosterLoaded{read_roster(*r.needs_.log)}); });
    }
    void operator()(const LoadOverview&) const {
      runner.writing_.add([&r = runner] { r.load_overview(); });
    }
    void operator()(const LoadHistory& e) const {
      runner.writing_.add([&r = runner, e] {
        r.needs_.results.post(HistoryLoaded{e.tub, e.animal, r.needs_.log->read_animal(e.animal)});
      });
    }
    void operator()(const ForecastAnimal& e) const {
      runner.reading_.add([&r = runner, e] {
        if (auto one = r.forecaster_.one(e.events, r.needs_.clock.now()))
          r.needs_.results.post(ForecastReady{std::move(one->forecast), std::move(one->density)});
      });
    }
    void operator()(const TidyLog&) const {
      // A log that could not be tidied now is tidied later, or by itself when it must be.
      runner.writing_.add([&r = runner] { std::ignore = r.needs_.log->tidy(); });
    }
    void operator()(const WatchCamera& e) const { runner.needs_.camera.watch(e.watching); }
    void operator()(const FindCameras&) const { runner.needs_.camera.find_cameras(); }
    void operator()(const MakeBatch& e) const {
      runner.writing_.add([&r = runner, e] { r.make_batch(e); });
    }
    void operator()(const PrintLabels& e) const {
      runner.writing_.add([&r = runner, e] { r.print_labels(e); });
    }
    void operator()(const PrintBadgeOf& e) const {
      runner.printing_.add([&r = runner, e] {
        r.needs_.results.post(
            LabelsPrinted{r.needs_.print({badge(e.name)}, e.settings).map(print_words)});
      });
    }
    void operator()(const ForeseeCover& e) const {
      runner.reading_.add([&r = runner, e] { r.foresee_cover(e); });
    }
    void operator()(const TellReturn& e) const {
      runner.reading_.add([&r = runner, e] { r.tell_return(e); });
    }
    void operator()(const PrintHandover& e) const {
      runner.reading_.add([&r = runner, e] { r.print_handover(e); });
    }
    void operator()(const PrintReturn& e) const {
      runner.printing_.add([&r = runner, e] {
        r.needs_.results.post(SheetPrinted{r.needs_.print_return(e.report, e.settings)});
      });
    }
    void operator()(const FindPrinters&) const {
      runner.printing_.add([&r = runner] { r.needs_.results.post(r.needs_.find_printers()); });
    }
    void operator()(const KeepSettings& e) const {
      runner.needs_.camera.follow(e.settings);
      runner.writing_.add([&r = runner, e] {
        const auto kept = r.needs_.keep_settings(e.settings);
        r.needs_.results.post(SettingsKept{kept ? std::nullopt : std::optional(kept.error())});
      });
    }
    void operator()(const FindPin&) const {
      runner.writing_.add(
          [&r = runner] { r.needs_.results.post(PinFound{r.needs_.pin->is_set()}); });
    }
    void operator()(const CheckPin& e) const {
      runner.writing_.add(
          [&r = runner, e] { r.needs_.results.post(PinChecked{r.needs_.pin->check(e.pin)}); });
    }
    void operator()(const KeepPin& e) const {
      runner.writing_.add([&r = runner, e] {
        const auto kept = r.needs_.pin->set(e.pin);
        r.needs_.results.post(PinKept{kept ? std::nullopt : std::optional(kept.error())});
      });
    }
    void operator()(const FindFiles&) const {
      runner.reading_.add(
          [&r = runner] { r.needs_.results.post(FilesFound{r.needs_.find_files()}); });
    }
    void operator()(const ReadFile& e) const { runner.import_.look_into(e.path); }
    void operator()(const WriteFile& e) const { runner.import_.write(e.path); }
    void operator()(const StopWriting&) const { runner.import_.stop(); }
    void operator()(const Quit&) const { runner.needs_.quit(); }
  };
  std::visit(Run{*this}, effect);
}

void EffectRunner::save(const SaveDrafts& effect) {
  auto events = needs_.log->append(effect.drafts, needs_.clock.now().utc);
  for (const Draft& draft : effect.drafts)
    if (draft.animal) touched_.insert(*draft.animal);
  needs_.results.post(Saved{effect.drafts, std::move(events)});
}

// The picture comes first: a name in the log then always leads to one. Whatever becomes of it, what
// is wrong is recorded.
void EffectRunner::save_with_picture(Draft draft, const std::shared_ptr<const GreyImage>& picture) {
  const auto name =
      picture ? needs_.keep_picture(draft.id, *picture)
              : Result<std::string>(failure(ErrorKind::NotFound, "The camera gave no picture."));
  if (name) std::get<Flagged>(draft.details).picture = *name;
  auto events = needs_.log->append({draft}, needs_.clock.now().utc);
  if (draft.animal) touched_.insert(*draft.animal);
  needs_.results.post(
      Saved{{draft}, std::move(events), name ? std::string{} : name.error().sentence});
}

// What is saved while the other thread reads would be missing from what it read; it is put right
// on this thread, in order with the saves, before the result is posted.
void EffectRunner::load_overview() {
  touched_.clear();
  reading_.add([this] {
    auto overview =
        read_overview(*needs_.reading_log, forecaster_, needs_.clock.now(), Until::Everything);
    if (!overview) {
      report(overview.error());
      return;
    }
    OverviewReady ready{std::move(*overview), {}};
    if (auto round = read_round(*needs_.reading_log, ready.overview))
      ready.round = std::move(*round);
    writing_.add([this, all = std::move(ready)]() mutable { finish_overview(std::move(all)); });
  });
}

void EffectRunner::finish_overview(OverviewReady ready) {
  for (const AnimalId& animal : touched_) {
    const auto events = needs_.log->read_animal(animal);
    if (!events) continue;
    if (const auto state = fold_animal(*events)) replace(ready.overview.collection, *state);
    run(ForecastAnimal{animal, *events});
  }
  touched_.clear();
  needs_.results.post(std::move(ready));
}

void EffectRunner::make_batch(const MakeBatch& effect) {
  auto batch = rackside::make_batch(*needs_.log, effect.request, needs_.ids, needs_.clock);
  needs_.results.post(
      TubsMade{std::move(batch).map([](Batch&& made) { return std::move(made.tubs); })});
}

// What stands on the labels is read here, in order with the saves; reading them back and printing
// takes seconds and has a thread of its own.
void EffectRunner::print_labels(const PrintLabels& effect) {
  auto roster = read_roster(*needs_.log);
  if (!roster) {
    needs_.results.post(LabelsPrinted{tl::unexpected(std::move(roster.error()))});
    return;
  }
  printing_.add([this, effect, contents = label_contents(roster->collection, effect.tubs)] {
    auto outcome = needs_.print(contents, effect.settings);
    writing_.add([this, effect, outcome = std::move(outcome)] { finish_labels(effect, outcome); });
  });
}

void EffectRunner::finish_labels(const PrintLabels& effect, const Result<PrintOutcome>& outcome) {
  const auto recorded = outcome.and_then([&](const PrintOutcome& came_out) {
    return mark_printed(*needs_.log, came_out.printed, effect.by, needs_.ids, needs_.clock);
  });
  needs_.results.post(
      recorded ? LabelsPrinted{print_words(*outcome)}
               : LabelsPrinted{failure(recorded.error().kind,
                                       recorded.error().sentence +
                                           " The tubs are in the log; their labels can be printed "
                                           "later.")});
}

void EffectRunner::report(Error error) {
  needs_.results.post(RosterLoaded{tl::unexpected(std::move(error))});
}

}  // namespace rackside::kiosk

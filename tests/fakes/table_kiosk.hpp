#pragma once
// A kiosk on the table: the model with its effects run at once against a log in memory. No window,
// no threads, a clock that stands still until it is told to go on.

#include "core/overview/forecaster.hpp"
#include "kiosk/model/update.hpp"
#include "tests/fakes/fake_pin_keeper.hpp"
#include "tests/fakes/fixed_clock.hpp"
#include "tests/fakes/memory_log_store.hpp"

namespace rackside::tests {

class TableKiosk {
 public:
  TableKiosk();

  /// A tub with an animal in it, in the log before the kiosk starts. Returns the tub's code.
  Code house(int number, const std::string& species, Place place = {"A", "1", "1"});
  /// Puts an event about the animal of `tub` into the log, `days` ago.
  void happened(const Code& tub, double days_ago, Details details);

  /// Puts an event about no animal into the log, by the keeper, just now.
  void sets(Details details);

  void start();
  void does(const kiosk::Intent& intent);
  void scans(const Code& code) { does(kiosk::CodeRead{std::string(code.text())}); }
  void scans_card(Action action) { scans(action_code(action)); }

  [[nodiscard]] const kiosk::Model& model() const { return model_; }
  [[nodiscard]] std::string notice() const {
    return model_.notice ? model_.notice->sentence : std::string{};
  }
  /// The kinds of the standing events about the animal of `tub`, but its arrival.
  [[nodiscard]] std::vector<std::string> log_of(const Code& tub);
  [[nodiscard]] AnimalId animal_of(const Code& tub) const { return animals_.at(tub); }

  /// Types these digits and enters them.
  void types_pin(const std::string& digits) {
    for (const char digit : digits) does(kiosk::Typed{std::string(1, digit)});
    does(kiosk::Enter{});
  }
  /// Puts somebody into the log who works here.
  void works_here(const std::string& name, Role role, std::optional<Day> until = {});

  MemoryLogStore log;
  FakePinKeeper pin;
  FixedClock clock;
  bool effects_wait = false;  // effects are kept back until `run_waiting`
  void run_waiting();
  bool has_quit = false;
  std::vector<kiosk::PrintLabels> labels_wanted;
  Result<std::string> label_outcome = "1 label on 1 page: labels.pdf.";
  std::vector<std::string> badges_wanted;
  std::vector<EventId> sheets_wanted;  // by their covers
  Result<std::string> sheet_outcome = "The sheet for Oskar, 9 pages: handover.pdf.";
  Result<std::string> picture = "a picture.png";  // what becomes of one
  kiosk::PrintersFound printers{{"rack-room-labels", "office"}, {"a4-5x13", "roll-62x29"}, {}};
  std::vector<kiosk::RecordFile> record_files;  // that are found
  Result<kiosk::RecordCounts> record_counts;    // what is in whichever is looked into
  bool writes_a_file = false;
  std::optional<Error> settings_not_kept;  // the answer of the settings file

 private:
  void run(const kiosk::Effect& effect);
  void append(Draft draft);

  CountingIds ids_;
  Forecaster forecaster_;
  kiosk::Model model_;
  std::map<Code, AnimalId> animals_;
  std::vector<kiosk::Effect> waiting_;
};

}  // namespace rackside::tests

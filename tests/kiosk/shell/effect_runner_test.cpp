// The two threads behind the screens: nothing that was tapped is lost between them.

#include "kiosk/shell/effect_runner.hpp"

#include "core/clock/system_clock.hpp"
#include "core/clock/system_ids.hpp"
#include "core/store/sqlite_log.hpp"
#include "kiosk/shell/record_files.hpp"
#include "tests/fakes/fake_pin_keeper.hpp"
#include "tests/fakes/mailbox.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

Draft draft(std::int64_t order, Details details) {
  return Draft{.id = event_number(order),
               .by = "keeper",
               .when = at_hour(static_cast<double>(order)),
               .animal = animal_number(1),
               .enclosure = tub_number(1),
               .details = std::move(details),
               .note = {}};
}

struct Machine {
  TemporaryFolder folder;
  SystemClock clock;
  SystemIds ids{clock};
  Mailbox mailbox;
  CameraEye eye{mailbox.queue, [](const std::string&) { return nullptr; }};
  std::vector<LabelContent> labels;
  Result<PrintOutcome> outcome = failure(ErrorKind::NotFound, "There is no printer.");
  std::optional<EffectRunner> runner;

  Machine() {
    auto writing = SqliteLog::open(folder / "log.db", Access::Write).value();
    auto reading = SqliteLog::open(folder / "log.db", Access::Read).value();
    const auto print = [this](const std::vector<LabelContent>& contents, const Settings&) {
      labels = contents;
      return outcome;
    };
    runner.emplace(
        EffectRunner::Needs{std::move(writing), std::move(reading), clock, ids, mailbox.queue, eye,
                            [](const Settings&) { return Result<void>{}; }, print,
                            [] { return PrintersFound{}; }, std::make_unique<FakePinKeeper>(),
                            [] {}, [this] { return RecordFiles(folder / "log.db", {}).find(); },
                            std::make_unique<SystemIds>(clock)});
    runner->run(SaveDrafts{{draft(1, AnimalAdded{.key = "a"})}});
  }
};

}  // namespace

TEST_CASE("results come back in the order of the effects") {
  Machine machine;
  machine.runner->run(SaveDrafts{{draft(2, Misted{})}});
  machine.runner->run(LoadHistory{tub_number(1), animal_number(1)});
  CHECK(machine.mailbox.wait_for<Saved>().drafts.front().id == event_number(1));
  CHECK(machine.mailbox.wait_for<Saved>().drafts.front().id == event_number(2));
  CHECK(machine.mailbox.wait_for<HistoryLoaded>().events.value().size() == 2);
}

TEST_CASE("what is saved while everything is being read is in what was read") {
  Machine machine;
  for (int round = 0; round < 20; ++round) {
    machine.runner->run(LoadOverview{});
    machine.runner->run(SaveDrafts{{draft(10 + round, Offered{Outcome::Refused})}});
    const auto ready = machine.mailbox.wait_for<OverviewReady>();
    const AnimalState* animal = ready.overview.collection.animal(animal_number(1));
    REQUIRE(animal != nullptr);
    CHECK(animal->refusals_since_meal >= round);
    CHECK(animal->refusals_since_meal <= round + 1);
  }
}

TEST_CASE("everything that was to be saved is saved before the program ends") {
  Machine machine;
  for (int i = 0; i < 200; ++i) machine.runner->run(SaveDrafts{{draft(10 + i, Misted{})}});
  machine.runner.reset();
  auto log = SqliteLog::open(machine.folder / "log.db", Access::Read).value();
  CHECK(log->read_animal(animal_number(1)).value().size() == 201);
}

TEST_CASE("a batch is written, its labels are made elsewhere, and only what came out is recorded") {
  Machine machine;
  machine.runner->run(
      MakeBatch{BatchRequest{.species = "Orphnaecus philippinus", .date = {}, .count = 3}});
  const auto made = machine.mailbox.wait_for<TubsMade>();
  REQUIRE(made.tubs);
  REQUIRE(made.tubs->size() == 3);
  machine.outcome = PrintOutcome{{made.tubs->begin(), made.tubs->begin() + 2}, {}, 1, "x.pdf", ""};
  machine.runner->run(PrintLabels{*made.tubs, {}, "keeper"});
  CHECK(machine.mailbox.wait_for<LabelsPrinted>().outcome == "2 labels on 1 page: x.pdf.");
  CHECK(machine.labels.size() == 3);
  machine.runner->run(LoadRoster{});
  const auto roster = machine.mailbox.wait_for<RosterLoaded>().roster.value().collection;
  CHECK(roster.enclosure(made.tubs->at(0))->label_printed);
  CHECK_FALSE(roster.enclosure(made.tubs->at(2))->label_printed);
}

TEST_CASE("labels that could not be printed leave the batch in the log and say so") {
  Machine machine;
  machine.runner->run(
      MakeBatch{BatchRequest{.species = "Orphnaecus philippinus", .date = {}, .count = 1}});
  const auto made = machine.mailbox.wait_for<TubsMade>();
  machine.runner->run(PrintLabels{made.tubs.value(), {}, "keeper"});
  const auto printed = machine.mailbox.wait_for<LabelsPrinted>();
  REQUIRE_FALSE(printed.outcome);
  CHECK(printed.outcome.error().sentence ==
        "There is no printer. The tubs are in the log; their labels can be printed later.");
}

TEST_CASE("a file is looked into without a trace, then brought in, and its tubs are told") {
  Machine machine;
  std::filesystem::create_directories(machine.folder / "bring-in");
  write_file(machine.folder / "bring-in/animals.csv",
             "animal,species,rack\nb,Omothymus violaceopes,C\nc,Omothymus violaceopes,C\n");
  machine.runner->run(FindFiles{});
  const auto files = machine.mailbox.wait_for<FilesFound>().files;
  REQUIRE(files.size() == 1);
  machine.runner->run(ReadFile{files[0].path});
  CHECK(machine.mailbox.wait_for<FileLookedInto>().counts.value() == RecordCounts{2, 2, 0, 0});
  machine.runner->run(WriteFile{files[0].path});
  const auto brought = machine.mailbox.wait_for<BroughtIn>();
  CHECK(brought.so_far == WrittenSoFar{4, 4});
  CHECK(brought.tubs.size() == 2);
  machine.runner->run(ReadFile{files[0].path});
  CHECK(machine.mailbox.wait_for<FileLookedInto>().counts.value() == RecordCounts{0, 0, 0, 2});
}

TEST_CASE(
    "a stick that was pulled out, and a file that is none of ours, say so and write nothing") {
  Machine machine;
  machine.runner->run(ReadFile{(machine.folder / "gone.csv").string()});
  CHECK_FALSE(machine.mailbox.wait_for<FileLookedInto>().counts);
  write_file(machine.folder / "bills.csv", "invoice,amount\n1,2\n");
  machine.runner->run(ReadFile{(machine.folder / "bills.csv").string()});
  CHECK(machine.mailbox.wait_for<FileLookedInto>().counts.error().kind == ErrorKind::BadInput);
  machine.runner->run(WriteFile{(machine.folder / "bills.csv").string()});
  CHECK(machine.mailbox.wait_for<BroughtIn>().problem);
}

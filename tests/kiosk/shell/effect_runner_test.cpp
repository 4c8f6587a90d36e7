// The two threads behind the screens: nothing that was tapped is lost between them.

#include "kiosk/shell/effect_runner.hpp"

#include "core/clock/system_clock.hpp"
#include "core/clock/system_ids.hpp"
#include "core/people/people.hpp"
#include "core/store/sqlite_log.hpp"
#include "kiosk/frames/test_pattern.hpp"
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
  Result<std::string> picture = "a picture.png";
  std::vector<GreyImage> pictures;  // that were to be kept
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
    runner.emplace(EffectRunner::Needs{
        std::move(writing), std::move(reading), clock, ids, mailbox.queue, eye,
        [](const Settings&) { return Result<void>{}; }, print,
        [](const CoverReading& reading, const Settings&) {
          return Result<std::string>(reading.plan.cover.who + ": " +
                                     std::to_string(reading.plan.days.size()) + " days");
        },
        [](const ReturnReport& report, const Settings&) {
          return Result<std::string>(report.cover.who);
        },
        [] { return PrintersFound{}; },
        [this](const EventId&, const GreyImage& seen) {
          pictures.push_back(seen);
          return picture;
        },
        std::make_unique<FakePinKeeper>(), [] {},
        [this] { return RecordFiles(folder / "log.db", {}).find(); },
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

namespace {

Draft about_nobody(std::int64_t order, Details details) {
  Draft about = draft(order, std::move(details));
  about.animal.reset();
  about.enclosure.reset();
  return about;
}

// Somebody looks through a camera that shows the same picture again and again.
void look_through_a_camera(Machine& machine) {
  machine.eye.watch(Watching::EveryPicture);
  machine.eye.look_through(std::make_unique<TestPattern>(64, 48), {});
  while (machine.mailbox.wait_for<CameraSeen>().sight.picture == 0) {
  }
}

}  // namespace

TEST_CASE("what the camera sees is kept, and its name goes with what is wrong") {
  Machine machine;
  look_through_a_camera(machine);
  machine.runner->run(SaveWithPicture{draft(5, Flagged{})});
  auto saved = machine.mailbox.wait_for<Saved>();
  if (saved.drafts.front().id != event_number(5)) saved = machine.mailbox.wait_for<Saved>();
  CHECK(saved.events.value().front().details == Details{Flagged{"a picture.png"}});
  CHECK(saved.without.empty());
  REQUIRE(machine.pictures.size() == 1);
  CHECK(machine.pictures.front().width == 64);
}

TEST_CASE("a picture that cannot be kept, or is not there, does not hold up what is wrong") {
  for (const bool camera : {true, false}) {
    Machine machine;
    if (camera) look_through_a_camera(machine);
    machine.picture = failure(ErrorKind::Full, "There is no room.");
    machine.runner->run(SaveWithPicture{draft(5, Flagged{})});
    auto saved = machine.mailbox.wait_for<Saved>();
    if (saved.drafts.front().id != event_number(5)) saved = machine.mailbox.wait_for<Saved>();
    CHECK(saved.events.value().front().details == Details{Flagged{}});
    CHECK(saved.without == (camera ? "There is no room." : "The camera gave no picture."));
    machine.runner->run(LoadHistory{tub_number(1), animal_number(1)});
    CHECK(machine.mailbox.wait_for<HistoryLoaded>().events.value().size() == 2);
  }
}

TEST_CASE("a cover is foreseen and its sheet printed beside the writing") {
  Machine machine;
  const Day today = machine.clock.now().day();
  const auto planned =
      about_nobody(7, CoverPlanned{"Noor", today, today + std::chrono::days{4}, {}});
  machine.runner->run(SaveDrafts{{planned}});
  while (machine.mailbox.wait_for<Saved>().drafts.front().id != planned.id) {
  }
  machine.runner->run(ForeseeCover{planned.id, {DateStyle::German, {}}});
  const auto worked = machine.mailbox.wait_for<CoverWorked>();
  CHECK(worked.cover == planned.id);
  CHECK((worked.part > 0 && worked.part < 1));
  const auto foreseen = machine.mailbox.wait_for<CoverForeseen>();
  CHECK(foreseen.cover == planned.id);
  REQUIRE(foreseen.brief);
  CHECK(foreseen.brief->supplies.days.size() == 5);
  CHECK(foreseen.brief->supplies.wording.dates == DateStyle::German);
  machine.runner->run(PrintHandover{planned.id, {}});
  CHECK(machine.mailbox.wait_for<SheetPrinted>().outcome == "Noor: 5 days");
  machine.runner->run(TellReturn{planned.id, {}});
  const auto told = machine.mailbox.wait_for<ReturnTold>();
  CHECK(told.report.value().cover.who == "Noor");
  machine.runner->run(PrintReturn{*told.report, {}});
  CHECK(machine.mailbox.wait_for<SheetPrinted>().outcome == "Noor");
  machine.runner->run(ForeseeCover{event_number(99), {}});
  CHECK_FALSE(machine.mailbox.wait_for<CoverForeseen>().brief);
}

TEST_CASE("a badge is printed as a label, and says where it went") {
  Machine machine;
  machine.outcome = PrintOutcome{{tub_number(1)}, {}, 1, "printer rack-room", ""};
  machine.runner->run(PrintBadgeOf{"Noor", {}});
  CHECK(machine.mailbox.wait_for<LabelsPrinted>().outcome ==
        "1 label on 1 page: printer rack-room.");
  REQUIRE(machine.labels.size() == 1);
  CHECK(machine.labels.front().code == badge_of("Noor"));
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

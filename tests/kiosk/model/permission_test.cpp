// Everything that can happen at the kiosk, against everybody who could stand there.

#include "kiosk/model/permission.hpp"

#include <set>

#include "tests/frame.hpp"
#include "tests/kiosk/model/staffed_kiosk.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

struct Expected {
  std::string name;
  Intent intent;
  // For: nobody set up, nobody there, an assistant, a keeper, a keeper who gave the PIN.
  // A allowed, W asks who is there, P asks for the PIN, R refused.
  std::string verdicts;
};

std::vector<Expected> table(StaffedKiosk& kiosk) {
  const AnimalId animal = kiosk.animal_of(kiosk.tub);
  const std::string open = "AAAAA";
  const std::string entry = "AWAAA";
  const std::string keepers = "AWRAA";
  const std::string with_pin = "AWRPA";
  const auto card = [](Action action) { return CodeRead{std::string(action_code(action).text())}; };
  return {
      {"took", Record{Action::Took}, entry},
      {"on its back", Record{Action::OnItsBack}, entry},
      {"died", Record{Action::Died}, with_pin},
      {"own undo, or none", Record{Action::Undo}, entry},
      {"took, by card", card(Action::Took), entry},
      {"died, by card", card(Action::Died), with_pin},
      {"a tub scanned", CodeRead{std::string(kiosk.tub.text())}, open},
      {"nonsense scanned", CodeRead{"https://example.org"}, open},
      {"the round", Show{ScreenName::Round}, open},
      {"the records", Show{ScreenName::Records}, open},
      {"the drawer", Show{ScreenName::Drawer}, open},
      {"setup", Show{ScreenName::Setup}, with_pin},
      {"people", Show{ScreenName::People}, with_pin},
      {"a person", Show{ScreenName::Person}, with_pin},
      {"the form for new tubs", Show{ScreenName::NewTubs}, keepers},
      {"back", Close{}, open},
      {"a tub", OpenTub{kiosk.tub}, open},
      {"more tiles", TurnTiles{}, open},
      {"next resident", NextResident{}, open},
      {"capitals", Shift{}, open},
      {"a question about new tubs", Ask{AskNewTub{}}, keepers},
      {"what is wrong", Ask{AskWrong{kiosk.tub}}, entry},
      {"what there is instead", Ask{AskPrey{"cricket", Millimetres{8}}}, entry},
      {"a question about people", Ask{AskPerson{}}, with_pin},
      {"an answer offered", AnswerWith{"x"}, open},
      {"a key", Typed{"x"}, open},
      {"erase", Erase{}, open},
      {"enter", Enter{}, open},
      {"a page", Turn{1}, open},
      {"somebody else's entry", TakeBack{kiosk.somebody_elses_entry()}, with_pin},
      {"an entry nobody knows", TakeBack{EventId{}}, with_pin},
      {"a closer look", LookAt{kiosk.somebody_elses_entry()}, open},
      {"nothing that could be put right", CorrectTo{Action::Misted}, with_pin},
      {"put right as a death", CorrectTo{Action::Died}, with_pin},
      {"nothing on another day", CorrectDay{-1}, with_pin},
      {"a rack on the map", OpenRack{}, open},
      {"look for a state", LookFor{"premoult"}, open},
      {"ask for a number", AskNumber{}, entry},
      {"another kind of records", NextFilter{}, open},
      {"set out", SetOut{}, entry},
      {"end the round", EndRound{}, entry},
      {"the form's values", NextValue{}, keepers},
      {"make the tubs", MakeTubs{}, keepers},
      {"set up", SetUp{}, with_pin},
      {"the camera page", Show{ScreenName::Camera}, with_pin},
      {"look for cameras", LookForCameras{}, with_pin},
      {"the page for files", Show{ScreenName::BringIn}, with_pin},
      {"look for files", LookForFiles{}, with_pin},
      {"look into a file", LookInto{{"/media/x.csv", "x.csv", "media"}}, with_pin},
      {"bring it in", BringIn{}, with_pin},
      {"no more of it", StopBringingIn{}, with_pin},
      {"labels for what came", PrintBroughtIn{}, with_pin},
      {"files found", FilesFound{}, open},
      {"a file looked into", FileLookedInto{"x", RecordCounts{}}, open},
      {"a part brought in", PartBroughtIn{}, open},
      {"brought in", BroughtIn{}, open},
      {"the live picture", CameraSeen{}, open},
      {"a camera fitted", CameraFitted{}, open},
      {"a cover foreseen", CoverForeseen{EventId{}, CoverBrief{}}, open},
      {"a report told", ReturnTold{EventId{}, ReturnReport{}}, open},
      {"how far it has come", CoverWorked{}, open},
      {"a sheet printed", SheetPrinted{std::string("x")}, open},
      {"cameras found", CamerasFound{}, open},
      {"a name picked", PickPerson{"Oskar"}, open},
      {"step aside", StepAside{}, open},
      {"open a person", OpenPerson{"Oskar"}, with_pin},
      {"give access", GiveAccess{}, with_pin},
      {"end access", EndAccess{}, with_pin},
      {"another PIN", ChangePin{}, with_pin},
      {"a badge printed", PrintBadge{}, with_pin},
      {"the cover", Show{ScreenName::Cover}, with_pin},
      {"the form for a cover", Show{ScreenName::NewCover}, with_pin},
      {"days to choose from", Show{ScreenName::Days}, with_pin},
      {"the report on a cover", Show{ScreenName::Returned}, with_pin},
      {"who stands in", Ask{AskStandIn{}}, with_pin},
      {"whom they call", Ask{AskContact{}}, with_pin},
      {"the number to call", Ask{AskContactNumber{"Ines"}}, with_pin},
      {"a note for them", Ask{AskCoverNote{}}, with_pin},
      {"another cover", NextCover{}, with_pin},
      {"a day asked for", AskDay{}, with_pin},
      {"a day chosen", PickDay{}, with_pin},
      {"a rack of a cover", ToggleRack{"A"}, with_pin},
      {"plan a cover", PlanCover{}, with_pin},
      {"end a cover", EndCover{}, with_pin},
      {"print its sheet", PrintCover{}, with_pin},
      {"the picture of what is wrong", Show{ScreenName::Picture}, entry},
      {"take a picture", TakePicture{}, entry},
      {"take none", LeavePicture{}, entry},
      {"leave", Leave{}, "APPPA"},
      {"a label refused", LabelRefused{"x"}, open},
      {"a reader speaks", ReaderSays{}, open},
      {"the roster", RosterLoaded{Roster{}}, open},
      {"the overview", OverviewReady{}, open},
      {"a forecast", ForecastReady{Forecast{.animal = animal}, {}}, open},
      {"a history", HistoryLoaded{kiosk.tub, animal, std::vector<Event>{}}, open},
      {"saved", Saved{{}, std::vector<Event>{}}, open},
      {"whether there is a PIN", PinFound{true}, open},
      {"a PIN checked", PinChecked{PinAnswer{}}, open},
      {"a PIN kept", PinKept{}, open},
      {"the service stops", Stop{}, open},
      {"tubs made", TubsMade{std::vector<Code>{}}, open},
      {"labels printed", LabelsPrinted{std::string("x")}, open},
      {"printers found", PrintersFound{}, open},
      {"settings kept", SettingsKept{}, open},
      {"time passes", Tick{}, open},
  };
}

// Brings the kiosk to this standing, with the tub open.
void bring(StaffedKiosk& kiosk, Standing standing) {
  if (standing == Standing::Assistant) kiosk.scans_badge("Oskar");
  if (standing == Standing::Keeper || standing == Standing::Proven) kiosk.scans_badge("Ines");
  if (standing == Standing::Proven) kiosk.gives_pin();
  kiosk.scans(kiosk.tub);
}

// The same tub in a room where nobody was set up.
Model unset(const StaffedKiosk& staffed) {
  Model model = staffed.model();
  model.people = {};
  model.by = "keeper";
  return model;
}

char letter(Verdict verdict) {
  switch (verdict) {
    case Verdict::Allowed: return 'A';
    case Verdict::AskWho: return 'W';
    case Verdict::AskPin: return 'P';
    case Verdict::Refused: return 'R';
  }
  return '?';
}

}  // namespace

TEST_CASE("everybody may do what the table says, and nothing else, whatever can happen") {
  std::set<std::size_t> kinds;
  for (std::size_t column = 0; column < all_standings.size(); ++column) {
    StaffedKiosk kiosk;
    bring(kiosk, all_standings[column]);
    const Model model = column == 0 ? unset(kiosk) : kiosk.model();
    REQUIRE(standing_of(model) == all_standings[column]);
    REQUIRE(model.tub->history);
    for (const Expected& row : table(kiosk)) {
      INFO(row.name << ", standing " << column);
      kinds.insert(row.intent.index());
      CHECK(letter(permission(model, row.intent)) == row.verdicts[column]);
    }
  }
  // A new intent is not forgotten here.
  CHECK(kinds.size() == std::variant_size_v<Intent::Kinds>);
}

TEST_CASE("what is not allowed writes nothing, and says or asks something instead") {
  for (const Standing standing : {Standing::Nobody, Standing::Assistant, Standing::Keeper}) {
    StaffedKiosk names;
    for (const Expected& row : table(names)) {
      StaffedKiosk kiosk;
      bring(kiosk, standing);
      const auto before = kiosk.everything();
      const Verdict verdict = permission(kiosk.model(), row.intent);
      if (verdict == Verdict::Allowed) continue;
      kiosk.does(row.intent);
      INFO(row.name << ", standing " << static_cast<int>(standing));
      CHECK(kiosk.everything() == before);
      CHECK_FALSE(kiosk.has_quit);
      switch (verdict) {
        case Verdict::AskWho: CHECK(kiosk.model().screen == ScreenName::Who); break;
        case Verdict::AskPin: CHECK(kiosk.model().screen == ScreenName::Pin); break;
        case Verdict::Refused:
          CHECK_THAT(kiosk.notice(), Catch::Matchers::StartsWith("Only a keeper does this: "));
          break;
        case Verdict::Allowed: break;
      }
    }
  }
}

TEST_CASE("an assistant takes back an entry of their own, not somebody else's") {
  StaffedKiosk kiosk;
  kiosk.scans_badge("Oskar");
  kiosk.scans(kiosk.tub);
  kiosk.does(Record{Action::Misted});
  kiosk.does(Record{Action::Undo});
  CHECK(kiosk.notice() == "Undone. Both entries stay in the records.");
  kiosk.does(TakeBack{kiosk.somebody_elses_entry()});
  CHECK_THAT(kiosk.notice(), Catch::Matchers::Contains("taking back somebody else's entry"));
  CHECK(kiosk.log_of(kiosk.tub) == std::vector<std::string>{"misted"});
}

TEST_CASE("an assistant puts an entry of their own right, not somebody else's") {
  StaffedKiosk kiosk;
  kiosk.scans_badge("Oskar");
  kiosk.scans(kiosk.tub);
  kiosk.does(LookAt{kiosk.somebody_elses_entry()});
  kiosk.does(CorrectTo{Action::WaterFilled});
  CHECK_THAT(kiosk.notice(), Catch::Matchers::Contains("putting somebody else's entry right"));
  kiosk.does(Record{Action::ShedFound});
  kiosk.does(LookAt{kiosk.everything().back().id});
  kiosk.does(CorrectTo{Action::MoultSeen});
  CHECK(kiosk.log_of(kiosk.tub) == std::vector<std::string>{"misted", "moult"});
}

TEST_CASE("whoever scans their badge after somebody else finds no undo of theirs") {
  StaffedKiosk kiosk;
  kiosk.scans_badge("Ines");
  kiosk.scans(kiosk.tub);
  kiosk.does(Record{Action::Refused});
  kiosk.scans_badge("Oskar");
  kiosk.does(Record{Action::Undo});
  CHECK(kiosk.log_of(kiosk.tub) == std::vector<std::string>{"misted", "offered"});
}

namespace {

// Something an assistant could do at this moment, wild or not.
Intent any_doing(StaffedKiosk& kiosk) {
  const auto events = kiosk.everything();
  const Event& event = events[*rc::gen::inRange<std::size_t>(0, events.size())];
  const auto action =
      *rc::gen::elementOf(std::vector<Action>(all_actions.begin(), all_actions.end()));
  const auto screen =
      static_cast<ScreenName>(*rc::gen::inRange(0, static_cast<int>(ScreenName::BringIn) + 1));
  const std::string digit = std::to_string(*rc::gen::inRange(0, 9));
  return *rc::gen::elementOf(std::vector<Intent>{Record{action},
                                                 Record{Action::Undo},
                                                 TakeBack{event.id},
                                                 LookAt{event.id},
                                                 CorrectTo{action},
                                                 CorrectDay{-1},
                                                 Show{screen},
                                                 Close{},
                                                 OpenTub{kiosk.tub},
                                                 OpenTub{kiosk.other_tub},
                                                 CodeRead{std::string(action_code(action).text())},
                                                 Typed{digit},
                                                 Enter{},
                                                 Erase{},
                                                 SetOut{},
                                                 EndRound{},
                                                 EndAccess{},
                                                 GiveAccess{},
                                                 ChangePin{},
                                                 OpenPerson{"Ines"},
                                                 Ask{AskPerson{Role::Keeper}},
                                                 Ask{AskWrong{kiosk.tub}},
                                                 AnswerWith{"Oskar's friend"},
                                                 MakeTubs{},
                                                 PlanCover{},
                                                 EndCover{},
                                                 AskDay{},
                                                 PickDay{kiosk.clock.now().day()},
                                                 Ask{AskStandIn{}},
                                                 PrintBadge{},
                                                 TakePicture{},
                                                 LeavePicture{},
                                                 CameraFitted{true},
                                                 NextResident{},
                                                 Leave{},
                                                 SetUp{},
                                                 Tick{},
                                                 PickPerson{"Oskar"}});
}

}  // namespace

TEST_CASE("nothing an assistant does removes or hides an event of somebody else's") {
  rc::prop("the log only grows, and what it held still stands", [] {
    StaffedKiosk kiosk;
    kiosk.scans_badge("Oskar");
    kiosk.scans(kiosk.tub);
    const auto before = kiosk.everything();
    const Settings settings = kiosk.model().settings;
    for (int i = *rc::gen::inRange(1, 40); i > 0; --i) kiosk.does(any_doing(kiosk));
    const auto after = kiosk.everything();
    RC_ASSERT(std::ranges::includes(after, before, {}, &Event::id, &Event::id));
    for (const Event& event : before) RC_ASSERT(std::ranges::find(after, event) != after.end());
    const auto gone = taken_back(after);
    for (const Event& event : after) RC_ASSERT(event.by == "Oskar" || !gone.contains(event.id));
    for (const Event& event : after)
      RC_ASSERT(event.by != "Oskar" || (!std::holds_alternative<Died>(event.details) &&
                                        !std::holds_alternative<Left>(event.details) &&
                                        !std::holds_alternative<PersonEnded>(event.details)));
    RC_ASSERT(kiosk.model().settings == settings);
    RC_ASSERT(kiosk.pin.pin == "7294");
    RC_ASSERT(!kiosk.has_quit);
  });
}

#pragma once
// What people do at the kiosk: on the screen, or with a label in front of a reader.

#include <optional>
#include <string>
#include <variant>

#include "core/action/action.hpp"
#include "core/event/event.hpp"
#include "kiosk/model/bring_in_page.hpp"
#include "kiosk/model/cover_page.hpp"
#include "kiosk/model/number_question.hpp"
#include "kiosk/model/question.hpp"
#include "kiosk/model/screen_name.hpp"
#include "kiosk/settings/settings.hpp"

namespace rackside::kiosk {

/// A tap on a tile, or the same by an action card.
struct Record {
  Action action = Action::Undo;
  bool operator==(const Record&) const = default;
};
struct Show {
  ScreenName screen = ScreenName::Round;
  bool operator==(const Show&) const = default;
};
/// Out of what is open now, to where one came from.
struct Close {
  bool operator==(const Close&) const = default;
};
struct OpenTub {
  Code code;
  bool operator==(const OpenTub&) const = default;
};
/// The map of this rack, from this shelf on; an empty shelf is the first. None: all racks.
struct OpenRack {
  std::optional<std::string> rack;
  std::string shelf;
  bool operator==(const OpenRack&) const = default;
};
/// These words in the search, instead of what was there.
struct LookFor {
  std::string words;
  bool operator==(const LookFor&) const = default;
};
/// A number is to be typed.
struct AskNumber {
  NumberQuestion question;
  bool operator==(const AskNumber&) const = default;
};
/// The next page of the tiles, on panels that do not hold all of them.
struct TurnTiles {
  bool operator==(const TurnTiles&) const = default;
};
/// Another of the animals that share the open tub.
struct NextResident {
  bool operator==(const NextResident&) const = default;
};
/// The letters of the on-screen keyboard become capitals, for one letter.
struct Shift {
  bool operator==(const Shift&) const = default;
};
/// Something is to be answered in words, on the keyboard.
struct Ask {
  Question question;
  bool operator==(const Ask&) const = default;
};
/// The answer that was offered, as it stands.
struct AnswerWith {
  std::string text;
  bool operator==(const AnswerWith&) const = default;
};
/// One key of the on-screen keypad or keyboard, or of a real one: UTF-8 of one character.
struct Typed {
  std::string character;
  bool operator==(const Typed&) const = default;
};
struct Erase {
  bool operator==(const Erase&) const = default;
};
struct Enter {
  bool operator==(const Enter&) const = default;
};
/// To this page of the list that is open, counted from 0.
struct Turn {
  int page = 0;
  bool operator==(const Turn&) const = default;
};
/// Takes back one event from the records of the open animal.
struct TakeBack {
  EventId event;
  bool operator==(const TakeBack&) const = default;
};
/// Opens one record of the open animal, to put it right.
struct LookAt {
  EventId event;
  bool operator==(const LookAt&) const = default;
};
/// It was this that happened, not what was recorded.
struct CorrectTo {
  Action action = Action::Took;
  bool operator==(const CorrectTo&) const = default;
};
/// It happened so many days later than recorded; negative: earlier.
struct CorrectDay {
  int later = 0;
  bool operator==(const CorrectDay&) const = default;
};
/// Shows the next kind of records only.
struct NextFilter {
  bool operator==(const NextFilter&) const = default;
};
/// Sets out on a round, or ends the one that is under way.
struct SetOut {
  bool operator==(const SetOut&) const = default;
};
struct EndRound {
  bool operator==(const EndRound&) const = default;
};
/// The next of the few values that this part of a new tub can have.
struct NextValue {
  NewTubField field = NewTubField::Stage;
  bool operator==(const NextValue&) const = default;
};
/// Writes the new tubs into the log and prints their labels.
struct MakeTubs {
  bool operator==(const MakeTubs&) const = default;
};
/// The kiosk is to be set up like this from now on.
struct SetUp {
  Settings settings;
  bool operator==(const SetUp&) const = default;
};
/// A camera was plugged in just now, perhaps.
struct LookForCameras {
  bool operator==(const LookForCameras&) const = default;
};
/// A stick was plugged in just now, perhaps.
struct LookForFiles {
  bool operator==(const LookForFiles&) const = default;
};
/// Every row of this file is to be looked at; nothing is written yet.
struct LookInto {
  RecordFile file;
  bool operator==(const LookInto&) const = default;
};
/// Writes what is new in the file that was looked into.
struct BringIn {
  bool operator==(const BringIn&) const = default;
};
/// No more of it; what is written stays.
struct StopBringingIn {
  bool operator==(const StopBringingIn&) const = default;
};
/// Labels for the tubs that came with it.
struct PrintBroughtIn {
  bool operator==(const PrintBroughtIn&) const = default;
};
/// Whoever has no badge at hand says who they are.
struct PickPerson {
  std::string name;
  bool operator==(const PickPerson&) const = default;
};
/// Nobody is at the kiosk any more.
struct StepAside {
  bool operator==(const StepAside&) const = default;
};
struct OpenPerson {
  std::string name;
  bool operator==(const OpenPerson&) const = default;
};
/// The person that is open gets access, or has it no longer.
struct GiveAccess {
  bool operator==(const GiveAccess&) const = default;
};
struct EndAccess {
  bool operator==(const EndAccess&) const = default;
};
/// Another PIN in the place of the one there is.
struct ChangePin {
  bool operator==(const ChangePin&) const = default;
};
/// The badge of the person that is open, on a label.
struct PrintBadge {
  bool operator==(const PrintBadge&) const = default;
};
/// The next of the covers that can be shown here.
struct NextCover {
  bool operator==(const NextCover&) const = default;
};
/// A day of the cover that is being planned is to be chosen, and is.
struct AskDay {
  WhichDay which = WhichDay::First;
  bool operator==(const AskDay&) const = default;
};
struct PickDay {
  Day day;
  bool operator==(const PickDay&) const = default;
};
/// This rack belongs to the cover that is being planned, or does not.
struct ToggleRack {
  std::string rack;
  bool operator==(const ToggleRack&) const = default;
};
/// Writes the cover that was filled in.
struct PlanCover {
  bool operator==(const PlanCover&) const = default;
};
/// The cover that is shown ends today; has to be said twice.
struct EndCover {
  bool operator==(const EndCover&) const = default;
};
/// Prints the sheet about the cover that is shown: for the wall before it, the report after it.
struct PrintCover {
  bool operator==(const PrintCover&) const = default;
};
/// What the camera sees goes with what was said to be wrong, or goes without.
struct TakePicture {
  bool operator==(const TakePicture&) const = default;
};
struct LeavePicture {
  bool operator==(const LeavePicture&) const = default;
};
/// Somebody wants to leave the program: the window's close, Alt-F4.
struct Leave {
  bool operator==(const Leave&) const = default;
};

enum class ReadBy { Wedge, Camera };

/// What a reader delivered, as it came.
struct CodeRead {
  std::string text;
  ReadBy by = ReadBy::Wedge;
  int our_codes = 1;  // in view at once; this is the one nearest to the aim
  bool operator==(const CodeRead&) const = default;
};
/// The camera saw a label that is not ours or is damaged; what it holds was dropped there.
struct LabelRefused {
  std::string sentence;
  bool operator==(const LabelRefused&) const = default;
};

using Deed =
    std::variant<Record, Show, Close, OpenTub, OpenRack, LookFor, AskNumber, TurnTiles,
                 NextResident, Shift, Ask, AnswerWith, Typed, Erase, Enter, Turn, TakeBack, LookAt,
                 CorrectTo, CorrectDay, NextFilter, SetOut, EndRound, NextValue, MakeTubs, SetUp,
                 LookForCameras, LookForFiles, LookInto, BringIn, StopBringingIn, PrintBroughtIn,
                 PickPerson, StepAside, OpenPerson, GiveAccess, EndAccess, ChangePin, PrintBadge,
                 NextCover, AskDay, PickDay, ToggleRack, PlanCover, EndCover, PrintCover,
                 TakePicture, LeavePicture, Leave, CodeRead, LabelRefused>;

}  // namespace rackside::kiosk

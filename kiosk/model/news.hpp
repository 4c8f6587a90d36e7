#pragma once
// What readers and workers bring to the kiosk, and the passing of time: nobody's doing.

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/event/event.hpp"
#include "core/overview/overview.hpp"
#include "core/overview/round_so_far.hpp"
#include "core/people/pin.hpp"
#include "kiosk/model/bring_in_page.hpp"
#include "kiosk/model/camera_page.hpp"
#include "kiosk/model/cover_page.hpp"

namespace rackside::kiosk {

/// A reader came, went, or has something to say to the person holding the tub.
struct ReaderSays {
  std::string sentence;  // empty: nothing any more
  bool operator==(const ReaderSays&) const = default;
};

/// The live picture goes on. Only while setup's camera page is open.
struct CameraSeen {
  CameraSight sight;
  bool operator==(const CameraSeen&) const = default;
};
/// Whether there is a camera that is looked through.
struct CameraFitted {
  bool fitted = false;
  bool operator==(const CameraFitted&) const = default;
};
struct CamerasFound {
  std::vector<std::string> paths;
  bool operator==(const CamerasFound&) const = default;
};
/// The events of the roster kinds, folded: who lives where, who works here. Comes first, soon after
/// the start.
struct RosterLoaded {
  Result<Roster> roster;
  bool operator==(const RosterLoaded&) const = default;
};
/// All events, folded, and the forecasts for them. Takes longer.
struct OverviewReady {
  Overview overview;
  std::optional<RoundSoFar> round;  // one that was under way when the kiosk was last switched off
  bool operator==(const OverviewReady&) const = default;
};
struct ForecastReady {
  Forecast forecast;
  MoultDensity density;
  bool operator==(const ForecastReady&) const = default;
};
/// The events of one animal, for the tub that asked for it.
struct HistoryLoaded {
  Code tub;
  AnimalId animal;
  Result<std::vector<Event>> events;
  bool operator==(const HistoryLoaded&) const = default;
};
/// The drafts are on the disk (as these events), or they are not and nothing was written.
struct Saved {
  std::vector<Draft> drafts;
  Result<std::vector<Event>> events;
  std::string without;  // why a picture did not come along; empty: none was wanted, or it did
  bool operator==(const Saved&) const = default;
};
/// Whether a PIN is set.
struct PinFound {
  Result<bool> set;
  bool operator==(const PinFound&) const = default;
};
struct PinChecked {
  Result<PinAnswer> answer;
  bool operator==(const PinChecked&) const = default;
};
/// The new PIN holds from now on, or what there was holds on.
struct PinKept {
  std::optional<Error> problem;
  bool operator==(const PinKept&) const = default;
};
/// The machine is to be switched off, or the service stopped: nobody is asked.
struct Stop {
  bool operator==(const Stop&) const = default;
};
/// The new tubs are in the log, or nothing was written.
struct TubsMade {
  Result<std::vector<Code>> tubs;
  bool operator==(const TubsMade&) const = default;
};
/// What became of the labels: a sentence, or why there are none.
struct LabelsPrinted {
  Result<std::string> outcome;
  bool operator==(const LabelsPrinted&) const = default;
};
/// What a cover will need, as foreseen now.
struct CoverForeseen {
  EventId cover;
  Result<CoverBrief> brief;
  bool operator==(const CoverForeseen&) const = default;
};
/// What was done in a cover.
struct ReturnTold {
  EventId cover;
  Result<ReturnReport> report;
  bool operator==(const ReturnTold&) const = default;
};
/// How far the foreseeing or the report has come, from 0 to 1.
struct CoverWorked {
  EventId cover;
  double part = 0;
  bool operator==(const CoverWorked&) const = default;
};
/// What became of a sheet: a sentence, or why there is none.
struct SheetPrinted {
  Result<std::string> outcome;
  bool operator==(const SheetPrinted&) const = default;
};
/// Which printers and label sheets there are.
struct PrintersFound {
  std::vector<std::string> queues;
  std::vector<std::string> sheets;
  std::string sentence;  // why there is no printer; empty when there is one
  bool operator==(const PrintersFound&) const = default;
};
/// The settings are in their file, or are not and hold until the kiosk is switched off.
struct SettingsKept {
  std::optional<Error> problem;
  bool operator==(const SettingsKept&) const = default;
};
struct FilesFound {
  std::vector<RecordFile> files;
  bool operator==(const FilesFound&) const = default;
};
struct FileLookedInto {
  std::string path;
  Result<RecordCounts> counts;
  bool operator==(const FileLookedInto&) const = default;
};
/// A part of the file is on the disk.
struct PartBroughtIn {
  WrittenSoFar so_far;
  bool operator==(const PartBroughtIn&) const = default;
};
/// All of it is, or it was stopped, or could not go on: what `so_far` says is written all the same.
struct BroughtIn {
  WrittenSoFar so_far;
  std::optional<Error> problem;
  std::vector<Code> tubs;  // that came with it
  bool operator==(const BroughtIn&) const = default;
};
/// Nothing but the passing of time.
struct Tick {
  bool operator==(const Tick&) const = default;
};

using News =
    std::variant<ReaderSays, CameraSeen, CameraFitted, CamerasFound, RosterLoaded, OverviewReady,
                 ForecastReady, HistoryLoaded, Saved, PinFound, PinChecked, PinKept, Stop, TubsMade,
                 LabelsPrinted, CoverForeseen, ReturnTold, CoverWorked, SheetPrinted, PrintersFound,
                 SettingsKept, FilesFound, FileLookedInto, PartBroughtIn, BroughtIn, Tick>;

}  // namespace rackside::kiosk

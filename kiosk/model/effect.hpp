#pragma once
// What `update` asks the shell to do. Every result comes back as an intent.

#include <string>
#include <variant>
#include <vector>

#include "core/cover/return_report.hpp"
#include "core/event/event.hpp"
#include "kiosk/settings/settings.hpp"
#include "labels/batch/batch.hpp"

namespace rackside::kiosk {

/// Write the drafts in one transaction. Answer: Saved.
struct SaveDrafts {
  std::vector<Draft> drafts;
  bool operator==(const SaveDrafts&) const = default;
};
/// Write the draft with a picture of what the camera sees just now; without one where that fails.
/// Answer: Saved.
struct SaveWithPicture {
  Draft draft;
  bool operator==(const SaveWithPicture&) const = default;
};
/// Read who lives where. Answer: RosterLoaded.
struct LoadRoster {
  bool operator==(const LoadRoster&) const = default;
};
/// Read everything and forecast every animal. Answer: OverviewReady.
struct LoadOverview {
  bool operator==(const LoadOverview&) const = default;
};
/// Read one animal. Answer: HistoryLoaded.
struct LoadHistory {
  Code tub;
  AnimalId animal;
  bool operator==(const LoadHistory&) const = default;
};
/// Forecast one animal anew from these events. Answer: ForecastReady.
struct ForecastAnimal {
  AnimalId animal;
  std::vector<Event> events;
  bool operator==(const ForecastAnimal&) const = default;
};
/// Nobody is touching the kiosk: a good time to tidy the log. No answer.
struct TidyLog {
  bool operator==(const TidyLog&) const = default;
};
/// Tell the codes that come into view, or every picture as well. Answers: CameraSeen, many.
enum class Watching { Codes, EveryPicture };
struct WatchCamera {
  Watching watching = Watching::Codes;
  bool operator==(const WatchCamera&) const = default;
};
/// Which cameras are plugged in? Answer: CamerasFound.
struct FindCameras {
  bool operator==(const FindCameras&) const = default;
};
/// Draft the batch and write it. Answer: TubsMade.
struct MakeBatch {
  BatchRequest request;
  bool operator==(const MakeBatch&) const = default;
};
/// Print labels for these tubs as the kiosk is set up, and record which came out. Answer:
/// LabelsPrinted.
struct PrintLabels {
  std::vector<Code> tubs;
  Settings settings;
  std::string by;
  bool operator==(const PrintLabels&) const = default;
};
/// Print a badge as the kiosk is set up. Answer: LabelsPrinted.
struct PrintBadgeOf {
  std::string name;
  Settings settings;
  bool operator==(const PrintBadgeOf&) const = default;
};
/// Read everything and foresee the days of this cover. Answer: CoverForeseen.
struct ForeseeCover {
  EventId cover;
  Wording wording;
  bool operator==(const ForeseeCover&) const = default;
};
/// Read everything and tell what was done in this cover. Answer: ReturnTold.
struct TellReturn {
  EventId cover;
  Wording wording;
  bool operator==(const TellReturn&) const = default;
};
/// Print the sheet for the wall, or the report. Answer: SheetPrinted.
struct PrintHandover {
  EventId cover;
  Settings settings;
  bool operator==(const PrintHandover&) const = default;
};
struct PrintReturn {
  ReturnReport report;
  Settings settings;
  bool operator==(const PrintReturn&) const = default;
};
/// Ask the printing system. Answer: PrintersFound.
struct FindPrinters {
  bool operator==(const FindPrinters&) const = default;
};
/// Keep the settings, and let camera and printer follow them. Answer: SettingsKept.
struct KeepSettings {
  Settings settings;
  bool operator==(const KeepSettings&) const = default;
};
/// Ask whether a PIN is set. Answer: PinFound.
struct FindPin {
  bool operator==(const FindPin&) const = default;
};
/// Answer: PinChecked.
struct CheckPin {
  std::string pin;
  bool operator==(const CheckPin&) const = default;
};
/// Answer: PinKept.
struct KeepPin {
  std::string pin;
  bool operator==(const KeepPin&) const = default;
};
/// Look for CSV files. Answer: FilesFound.
struct FindFiles {
  bool operator==(const FindFiles&) const = default;
};
/// Look at every row. Answer: FileLookedInto.
struct ReadFile {
  std::string path;
  bool operator==(const ReadFile&) const = default;
};
/// Write what is new in it, in parts. Answers: PartBroughtIn, many, then BroughtIn.
struct WriteFile {
  std::string path;
  bool operator==(const WriteFile&) const = default;
};
/// Write no further part. Answer: the BroughtIn of WriteFile.
struct StopWriting {
  bool operator==(const StopWriting&) const = default;
};
struct Quit {
  bool operator==(const Quit&) const = default;
};

using Effect =
    std::variant<SaveDrafts, SaveWithPicture, LoadRoster, LoadOverview, LoadHistory, ForecastAnimal,
                 TidyLog, WatchCamera, FindCameras, MakeBatch, PrintLabels, PrintBadgeOf,
                 ForeseeCover, TellReturn, PrintHandover, PrintReturn, FindPrinters, KeepSettings,
                 FindPin, CheckPin, KeepPin, FindFiles, ReadFile, WriteFile, StopWriting, Quit>;

}  // namespace rackside::kiosk

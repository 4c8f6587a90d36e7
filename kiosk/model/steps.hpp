#pragma once
// The parts of `update`, one a subject. Each changes the model in place and returns effects.

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "kiosk/model/effect.hpp"
#include "kiosk/model/intent.hpp"
#include "kiosk/model/model.hpp"

namespace rackside::kiosk {

using Effects = std::vector<Effect>;

// trail.cpp: from screen to screen and back
/// Shows `screen`; the way back leads to where one is now. A screen that is on the way back already
/// is gone back to, so that nobody walks in circles.
void go_to(Model& model, ScreenName screen);
void go_back(Model& model);
/// Straight to the round, from wherever.
void go_home(Model& model);

// scan.cpp: codes, from whatever reader
[[nodiscard]] Effects on_code(Model& model, std::string_view text, const Stamp& stamp);
[[nodiscard]] Effects open_tub(Model& model, const Code& code);
[[nodiscard]] Effects show_resident(Model& model, std::size_t index);

// draft_now.cpp
/// What happens just now, by whoever is here; of no animal and no tub until they are named.
[[nodiscard]] Draft draft_now(std::string by, const Stamp& stamp, Details details);

// record.cpp: what is written
[[nodiscard]] Effects record(Model& model, Action action, const Stamp& stamp);
[[nodiscard]] Effects take_back(Model& model, EventId event, const Stamp& stamp);
[[nodiscard]] Effects on_saved(Model& model, const Saved& saved, const Stamp& stamp);

// correct.cpp: a record that is not as it was
void look_at(Model& model, EventId event);
[[nodiscard]] Effects correct_to(Model& model, Action action, const Stamp& stamp);
[[nodiscard]] Effects correct_day(Model& model, int later, const Stamp& stamp);

// round.cpp: the walk along the racks
[[nodiscard]] Effects set_out(Model& model, const Stamp& stamp);
[[nodiscard]] Effects end_round(Model& model, const Stamp& stamp);
/// Makes the day's plan anew where it has gone stale.
void refresh_plan(Model& model);
/// How the kiosk is set up, where sentences are made.
void take_settings(Model& model, Settings settings);
void note_for_round(Model& model, const Event& event);
void take_round(Model& model, std::optional<RoundSoFar> round);

// entry.cpp: keypad and find
[[nodiscard]] Effects on_typed(Model& model, const std::string& character, const Stamp& stamp);
void on_erase(Model& model);
[[nodiscard]] Effects on_enter(Model& model, const Stamp& stamp);

// number.cpp: a number is typed
void ask_number(Model& model, const NumberQuestion& question);
void type_number(Model& model, char c);
[[nodiscard]] Effects enter_number(Model& model, const Stamp& stamp);
/// "leg span 54 mm", "24.3 °C, rack A"; empty for what is no number.
[[nodiscard]] std::string number_words(const Details& details, Units units);

// map.cpp: the racks as they stand
/// The map at the tub that was open last, or at the only rack there is; else all racks.
void show_map(Model& model);
void open_rack(Model& model, const OpenRack& at);
[[nodiscard]] Effects open_shelf(Model& model, const Code& code);

// camera.cpp: setup's camera page
/// The live picture begins and ends with the page.
[[nodiscard]] Effects follow_screen(Model& model, ScreenName before);
[[nodiscard]] Effects set_up(Model& model, const Settings& settings);
void on_sight(Model& model, const CameraSight& sight);
void on_cameras(Model& model, const CamerasFound& found);

// asking.cpp: answers in words
void ask(Model& model, const Question& question);
/// What was answered before and begins like what is typed now, at most `most`.
[[nodiscard]] std::vector<std::string> answers_known(const Model& model, std::size_t most);
/// What is asked, as a title: "species".
[[nodiscard]] std::string question_words(const Question& question);
[[nodiscard]] Effects answer(Model& model, const Stamp& stamp);
/// It could not be written: the words are there to be gone on with.
void keep_words(Model& model, const Draft& draft);

// prey.cpp: what is offered
/// Every kind of prey that somebody here has been offered, and the usual ones.
[[nodiscard]] std::set<std::string> prey_known(const Model& model);
/// From `text`, "roach" or "roach 12 mm". Gives back why not.
[[nodiscard]] std::optional<std::string> offer_instead(Model& model, const AskPrey& about,
                                                       const std::string& text);

// flag.cpp: something is wrong
/// Why nothing can be said now; none: it can.
[[nodiscard]] std::optional<std::string> why_no_flag(const Model& model, const AskWrong& about,
                                                     const std::string& words);
[[nodiscard]] Effects flag(Model& model, const AskWrong& about, const std::string& words,
                           const Stamp& stamp);
/// What is said of a flag that is on the disk; `without` says why no picture is, or is empty.
[[nodiscard]] std::string flag_saved_words(const Model& model, const std::string& without);
/// With what the camera sees, or without.
[[nodiscard]] Effects take_picture(Model& model);
[[nodiscard]] Effects leave_picture(Model& model);
/// Out of the program; what is wrong is recorded first, without a picture.
[[nodiscard]] Effects quit(Model& model);

// new_tubs.cpp: the form for new tubs
[[nodiscard]] std::string new_tub_words(NewTubField field);
[[nodiscard]] std::string new_tub_value(const BatchRequest& form, NewTubField field);
/// Gives back why not.
[[nodiscard]] std::optional<std::string> set_new_tub(BatchRequest& form, NewTubField field,
                                                     const std::string& text);
void next_value(Model& model, NewTubField field);
[[nodiscard]] Effects make_tubs(Model& model);
[[nodiscard]] Effects on_tubs_made(Model& model, const TubsMade& made);

// bring_in.cpp: records from CSV files
[[nodiscard]] Effects look_for_files(Model& model);
[[nodiscard]] Effects look_into(Model& model, const RecordFile& file);
[[nodiscard]] Effects bring_in(Model& model);
[[nodiscard]] Effects print_brought_in(Model& model);
void on_looked_into(Model& model, const FileLookedInto& looked);
[[nodiscard]] Effects on_brought_in(Model& model, const BroughtIn& brought);

// presence.cpp: who is at the kiosk
/// Takes over who works here; for the first time, nobody is at the kiosk then, unless only one
/// person could be, and a first start with nobody and nothing asks who keeps this collection.
void take_people(Model& model, const People& people);
/// Somebody does something just now; whoever was here before may have gone since.
void note_presence(Model& model, const Stamp& stamp);
[[nodiscard]] Effects on_badge(Model& model, const Code& badge, const Stamp& stamp);
/// As on_badge, by what is known here.
[[nodiscard]] Effects welcome(Model& model, const Code& badge, const Stamp& stamp);
[[nodiscard]] Effects pick_person(Model& model, const std::string& name, const Stamp& stamp);
void step_aside(Model& model);
[[nodiscard]] Effects on_came(Model& model, const PersonCame& came, const Stamp& stamp);

// held_up.cpp: what waits for a badge or a PIN
[[nodiscard]] Effects ask_who(Model& model, const Intent& wanted);
[[nodiscard]] Effects ask_pin(Model& model, const Intent& wanted);
/// The question was answered: goes on with what was wanted.
[[nodiscard]] Effects go_on(Model& model, const Stamp& stamp);
/// In a sentence after "for": "taking back somebody else's entry".
[[nodiscard]] std::string purpose(const Model& model, const Intent& wanted);

// pin.cpp: the keeper's PIN
[[nodiscard]] Effects choose_pin(Model& model);
void type_pin(Model& model, const std::string& character);
[[nodiscard]] Effects enter_pin(Model& model);
void on_pin_found(Model& model, const PinFound& found);
[[nodiscard]] Effects on_pin_checked(Model& model, const PinChecked& checked, const Stamp& stamp);
[[nodiscard]] Effects on_pin_kept(Model& model, const PinKept& kept, const Stamp& stamp);

// people.cpp: who may work here
/// Gives back why not.
[[nodiscard]] std::optional<std::string> name_person(Model& model, Role role,
                                                     const std::string& typed);
/// Writes the person who was named, once there is a PIN.
[[nodiscard]] Effects add_person(Model& model, const Stamp& stamp);
void open_person(Model& model, const std::string& name);
[[nodiscard]] Effects give_access(Model& model, const Stamp& stamp);
[[nodiscard]] Effects end_access(Model& model, const Stamp& stamp);
/// What was saved about people. Nothing for other events.
[[nodiscard]] Effects on_people_event(Model& model, const Event& event, const Stamp& stamp);

/// A label with the badge of the person that is open.
[[nodiscard]] Effects print_badge(const Model& model);

// cover.cpp: somebody stands in
/// Those that hold or come, the next one first.
[[nodiscard]] std::vector<const Cover*> covers_ahead(const Model& model);
/// Those that have begun, the last one first.
[[nodiscard]] std::vector<const Cover*> covers_begun(const Model& model);
[[nodiscard]] Effects open_cover(Model& model);
[[nodiscard]] Effects open_return(Model& model);
[[nodiscard]] Effects next_cover(Model& model);
[[nodiscard]] Effects end_cover(Model& model, const Stamp& stamp);
[[nodiscard]] Effects print_cover(Model& model);
/// A cover, or what is to be known in one. What is saved with it belongs to it.
[[nodiscard]] bool is_about_cover(const Model& model, const Details& details);
[[nodiscard]] Effects on_cover_event(Model& model, const Event& event);

// cover_told.cpp: what workers bring about one
void on_cover_foreseen(Model& model, const CoverForeseen& foreseen);
void on_return_told(Model& model, const ReturnTold& told);
void on_cover_worked(Model& model, const CoverWorked& worked);
void on_sheet_printed(Model& model, const SheetPrinted& printed);

// new_cover.cpp: the form for one
[[nodiscard]] std::set<std::string> stand_ins_known(const Model& model);
/// Gives back why not.
[[nodiscard]] std::optional<std::string> name_stand_in(Model& model, const std::string& typed);
void ask_day(Model& model, WhichDay which);
void pick_day(Model& model, Day day);
void toggle_rack(Model& model, const std::string& rack);
[[nodiscard]] Effects plan_cover(Model& model, const Stamp& stamp);

// for_stand_in.cpp: what whoever stands in is to know
/// The first of them; null: nobody.
[[nodiscard]] const Contact* keeper_to_call(const CoverBook& book);
/// The last note that is about no tub and no rack; null: none.
[[nodiscard]] const NoteForCover* note_for_all(const CoverBook& book);
[[nodiscard]] std::set<std::string> keepers_known(const Model& model);
/// Give back why not.
[[nodiscard]] std::optional<std::string> why_no_contact(const std::string& name);
[[nodiscard]] std::optional<std::string> why_no_number(const Model& model,
                                                       const std::string& number);
/// In the place of keeper_to_call; without a number nobody is to be called.
[[nodiscard]] Effects set_contact(const Model& model, const std::string& name,
                                  const std::string& number, const Stamp& stamp);
/// In the place of note_for_all; without words there is none.
[[nodiscard]] Effects write_note(const Model& model, const std::string& words, const Stamp& stamp);

// update.cpp
/// What `update` does when it is allowed, and what it asks or says when it is not.
[[nodiscard]] Effects decide(Model& model, const Intent& intent, const Stamp& stamp);

// loaded.cpp: what workers bring
[[nodiscard]] Effects on_history(Model& model, const HistoryLoaded& loaded, const Stamp& stamp);
[[nodiscard]] Effects on_roster(Model& model, const RosterLoaded& loaded, const Stamp& stamp);
void on_overview(Model& model, const OverviewReady& ready);

inline void tell(Model& model, Tone tone, std::string sentence) {
  model.notice = Notice{tone, std::move(sentence)};
}

}  // namespace rackside::kiosk

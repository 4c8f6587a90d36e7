// Setup, and how tubs and records come in.

#include "tests/generators/events.hpp"
#include "tests/kiosk/screens/shelf.hpp"

namespace rackside::tests {

using kiosk::Model;
using kiosk::ScreenName;

namespace {

constexpr const char* shelf_eye =
    "/dev/v4l/by-id/usb-Long_Name_Optics_Shelf_Eye_1080p_SN0042-video-index0";

// Setup's camera page, with `sight` in it if there is one.
Model camera_page(const std::string& camera, const std::optional<kiosk::CameraSight>& sight,
                  std::vector<std::string> plugged_in = {}) {
  TableKiosk kiosk;
  kiosk.start();
  kiosk.does(kiosk::Show{ScreenName::Camera});
  kiosk::Settings settings = kiosk.model().settings;
  settings.camera = camera;
  settings.aim = {0.45, 0.5, 0.7};
  kiosk.does(kiosk::SetUp{settings});
  kiosk.does(kiosk::CamerasFound{std::move(plugged_in)});
  if (sight) kiosk.does(kiosk::CameraSeen{*sight});
  return kiosk.model();
}

kiosk::CameraSight live_sight(int width, int height) {
  kiosk::CameraSight sight{.camera = shelf_eye, .source = "camera Shelf Eye"};
  sight.picture = 1;
  sight.width = width;
  sight.height = height;
  return sight;
}
}  // namespace

std::vector<Situation> setup_situations() {
  return {
      {"setup", [] { return Shelf{}.show(ScreenName::Setup); }},
      {"camera_none", [] { return camera_page("", std::nullopt); }},
      {"camera_reads",
       [] {
         auto sight = live_sight(640, 480);
         sight.code = tub_number(1);
         sight.our_codes = 2;
         sight.read = {{{{250, 180}, {340, 190}, {335, 280}, {245, 270}}}};
         sight.unread = {{{{400, 100}, {470, 100}, {470, 170}, {400, 170}}}};
         return camera_page(shelf_eye, sight, {shelf_eye});
       }},
      {"camera_lost",
       [] {
         auto sight = live_sight(1280, 720);
         sight.trouble = "The camera does not answer. Plug it in again; it is then used at once.";
         return camera_page(
             shelf_eye, sight,
             {"/dev/v4l/by-id/usb-A-video-index0", "/dev/v4l/by-id/usb-B-video-index0",
              "/dev/v4l/by-id/usb-C-video-index0"});
       }},
      {"bring_in",
       [] {
         Shelf shelf;
         for (int i = 0; i < 14; ++i)
           shelf.kiosk.record_files.push_back(
               {"/media/x/" + std::to_string(i),
                i == 1 ? std::string(longest) + ".csv" : "animals.csv", i == 2 ? longest : "BLUE"});
         return shelf.show(ScreenName::BringIn);
       }},
      {"bring_in_none", [] { return Shelf{}.show(ScreenName::BringIn); }},
      {"bring_in_counted",
       [] {
         Shelf shelf;
         shelf.kiosk.record_files = {{"/media/x/animals.csv", "animals.csv", "BLUE"}};
         shelf.kiosk.record_counts = kiosk::RecordCounts{2'000, 1'998, 0, 12};
         shelf.kiosk.does(kiosk::Show{ScreenName::BringIn});
         shelf.kiosk.does(kiosk::LookInto{shelf.kiosk.record_files.front()});
         return shelf.kiosk.model();
       }},
      {"bring_in_writing",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::Show{ScreenName::BringIn});
         shelf.kiosk.does(kiosk::PartBroughtIn{{124'000, 500'000}});
         return shelf.kiosk.model();
       }},
      {"bring_in_full",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::Show{ScreenName::BringIn});
         shelf.kiosk.does(kiosk::BroughtIn{
             {124'000, 500'000},
             Error{ErrorKind::Full,
                   "The disk is full. This was not saved; everything saved before is safe. Make "
                   "room, then do it again.",
                   {}},
             {}});
         return shelf.kiosk.model();
       }},
      {"new_tubs", [] { return Shelf{}.show(ScreenName::NewTubs); }},
      {"new_tubs_filled",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::Show{ScreenName::NewTubs});
         shelf.kiosk.does(kiosk::Ask{kiosk::AskNewTub{kiosk::NewTubField::Species}});
         shelf.kiosk.does(kiosk::AnswerWith{longest});
         shelf.kiosk.does(kiosk::Ask{kiosk::AskNewTub{kiosk::NewTubField::Count}});
         shelf.kiosk.does(kiosk::AnswerWith{"4800"});
         shelf.kiosk.does(kiosk::MakeTubs{});
         return shelf.kiosk.model();
       }},
      {"words",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::Ask{kiosk::AskNewTub{kiosk::NewTubField::Species}});
         for (const char* c : {"p", "s", "e"}) shelf.kiosk.does(kiosk::Typed{c});
         return shelf.kiosk.model();
       }},
      {"words_refused",
       [] {
         Shelf shelf;
         shelf.kiosk.does(kiosk::Ask{kiosk::AskNewTub{kiosk::NewTubField::Count}});
         shelf.kiosk.does(
             kiosk::AnswerWith{"many and a good deal more than anyone can count in a day"});
         return shelf.kiosk.model();
       }},
  };
}

}  // namespace rackside::tests

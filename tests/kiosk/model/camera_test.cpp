#include <algorithm>

#include "kiosk/model/update.hpp"
#include "tests/fakes/fixed_clock.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

// The model alone, and the effects of the last intent.
struct Desk {
  FixedClock clock{at_hour(0).moment};
  CountingIds ids;
  Model model = begin("keeper", at_hour(0).moment).first;
  std::vector<Effect> effects;

  void does(const Intent& intent) {
    Next next = update(std::move(model), intent, Stamp{clock.now(), EventId{ids.next()}});
    model = std::move(next.first);
    effects = std::move(next.second);
  }
  [[nodiscard]] bool asked(const Effect& effect) const {
    return std::ranges::find(effects, effect) != effects.end();
  }
};

const Effect watch{WatchCamera{Watching::EveryPicture}}, enough{WatchCamera{Watching::Codes}};

CameraSight sight_of(std::string camera) {
  CameraSight sight{.camera = std::move(camera), .source = "camera Shelf Eye"};
  sight.picture = 7;
  sight.width = 1280;
  sight.height = 720;
  return sight;
}

}  // namespace

TEST_CASE("the live picture begins with the camera page") {
  Desk desk;
  desk.does(Show{ScreenName::Camera});
  CHECK(desk.asked(watch));
  CHECK(desk.asked(FindCameras{}));
  desk.does(CameraSeen{sight_of("")});
  REQUIRE(desk.model.camera);
  CHECK(desk.model.camera->sight == sight_of(""));
  CHECK(desk.effects.empty());
}

TEST_CASE("it ends however the page is left") {
  const std::vector<Intent> ways{Close{}, Show{ScreenName::Find}, Show{ScreenName::Round},
                                 OpenTub{tub_number(1)}};
  for (const Intent& way : ways) {
    Desk desk;
    desk.does(Show{ScreenName::Setup});
    desk.does(Show{ScreenName::Camera});
    desk.does(way);
    if (desk.model.screen == ScreenName::Camera) continue;  // a tub that is not known here
    CHECK(desk.asked(enough));
    CHECK_FALSE(desk.model.camera);
  }
  Desk desk;
  desk.does(Show{ScreenName::Camera});
  desk.clock.advance(idle_return);
  desk.does(Tick{});
  CHECK(desk.model.screen == ScreenName::Round);
  CHECK(desk.asked(enough));
}

TEST_CASE("pictures do not count as a hand: an open camera page goes home by itself") {
  Desk desk;
  desk.does(Show{ScreenName::Camera});
  desk.clock.advance(idle_return);
  desk.does(CameraSeen{sight_of("")});
  desk.does(Tick{});
  CHECK(desk.model.screen == ScreenName::Round);
}

TEST_CASE("what comes from a camera that was changed, or after the page was left, is dropped") {
  Desk desk;
  desk.does(Show{ScreenName::Camera});
  desk.does(CameraSeen{sight_of("")});
  Settings settings = desk.model.settings;
  settings.camera = "/dev/v4l/by-id/usb-Shelf_Eye-video-index0";
  desk.does(SetUp{settings});
  CHECK(desk.asked(KeepSettings{settings}));
  CHECK_FALSE(desk.model.camera->sight);
  desk.does(CameraSeen{sight_of("")});
  CHECK_FALSE(desk.model.camera->sight);
  desk.does(CameraSeen{sight_of(settings.camera)});
  CHECK(desk.model.camera->sight);
  desk.does(Close{});
  desk.does(CameraSeen{sight_of(settings.camera)});
  CHECK_FALSE(desk.model.camera);
}

TEST_CASE("while the camera is aimed its codes open nothing, a scanner's are taken as ever") {
  Desk desk;
  desk.does(Show{ScreenName::Camera});
  const std::string text(tub_number(1).text());
  desk.does(CodeRead{text, ReadBy::Camera});
  CHECK(desk.effects.empty());
  CHECK(desk.model.screen == ScreenName::Camera);
  desk.does(LabelRefused{"That label is not one of ours."});
  CHECK_FALSE(desk.model.notice);
  desk.does(CodeRead{text, ReadBy::Wedge});
  CHECK_FALSE(desk.effects.empty());
}

TEST_CASE("looking again asks which cameras there are") {
  Desk desk;
  desk.does(Show{ScreenName::Camera});
  desk.does(LookForCameras{});
  CHECK(desk.effects == std::vector<Effect>{FindCameras{}});
  desk.does(CamerasFound{{"/dev/v4l/by-id/usb-Shelf_Eye-video-index0"}});
  CHECK(desk.model.camera->plugged_in.size() == 1);
}

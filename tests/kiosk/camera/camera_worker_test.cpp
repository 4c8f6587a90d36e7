#include "kiosk/camera/camera_worker.hpp"

#include "tests/fakes/scripted_frames.hpp"
#include "tests/frame.hpp"
#include "tests/generators/drawn_symbols.hpp"
#include "tests/generators/frames.hpp"

using namespace rackside;
using std::chrono::milliseconds;
using tests::ScriptedFrames;

namespace {

constexpr CameraPace quick{milliseconds{1}, milliseconds{10'000}, milliseconds{1}};

// A worker on a script, and a place to wait for its news.
struct Setup {
  ScriptedFrames* script;  // owned by the worker
  std::mutex mutex;
  std::condition_variable woken;
  int wakes = 0;
  std::unique_ptr<CameraWorker> worker;

  Setup() {
    auto source = std::make_unique<ScriptedFrames>();
    script = source.get();
    worker = std::make_unique<CameraWorker>(
        std::move(source), Aim{},
        [this](CameraWorker&) {
          const std::lock_guard lock(mutex);
          ++wakes;
          woken.notify_all();
        },
        quick);
  }

  template <class... Steps>
  std::vector<CameraNews> news_of(Steps... steps) {
    (script->push(std::move(steps)), ...);
    script->wait_until_taken();
    return worker->take_news();
  }
};

struct Labelled {
  Code code;
  GreyImage image;
};

Labelled label(std::uint64_t seed) {
  tests::Random random(seed);
  const Code code = tests::random_code(random);
  return {code, tests::photograph(tests::symbol_of(std::string(code.text()), 1), {}, random).image};
}

// A label of so little contrast that one looks like another to who compares the frames' brightness.
GreyImage faint(std::uint64_t seed) {
  tests::Random random(seed);
  tests::Sheet sheet(640, 480);
  sheet.put(tests::symbol_of(std::string(tests::random_code(random).text()), 1), 270, 190, 4);
  GreyImage image = sheet.image();
  for (auto& pixel : image.pixels) pixel = static_cast<std::uint8_t>(100 + pixel / 28);
  return image;
}

GreyImage nothing() { return {640, 480, std::vector<std::uint8_t>(640 * 480, 128)}; }

template <class News>
std::vector<News> all_of(const std::vector<CameraNews>& news) {
  std::vector<News> list;
  for (const auto& item : news)
    if (const auto* found = std::get_if<News>(&item)) list.push_back(*found);
  return list;
}

}  // namespace

TEST_CASE("a label before the camera is told once, with a wake-up") {
  Setup setup;
  const auto shown = label(1);
  const auto news = setup.news_of(shown.image, shown.image, shown.image);
  CHECK(all_of<CodeShown>(news) == std::vector{CodeShown{shown.code, 1}});
  CHECK(setup.wakes >= 1);
}

TEST_CASE("a label shown again after it has left is told again") {
  Setup setup;
  const auto shown = label(5);
  auto news = setup.news_of(shown.image, nothing());
  std::this_thread::sleep_for(ViewLimits{}.absence + milliseconds{100});
  const auto later = setup.news_of(nothing(), shown.image, shown.image);
  news.insert(news.end(), later.begin(), later.end());
  CHECK(all_of<CodeShown>(news) == std::vector{CodeShown{shown.code, 1}, CodeShown{shown.code, 1}});
}

TEST_CASE(
    "of two labels before the camera the one nearest to the aim is told, and that there are two") {
  Setup setup;
  tests::Random random(6);
  const Code aimed = tests::random_code(random), beside = tests::random_code(random);
  tests::Sheet sheet(640, 480);
  sheet.put(tests::symbol_of(std::string(aimed.text()), 1), 260, 180, 4);
  sheet.put(tests::symbol_of(std::string(beside.text()), 1), 400, 190, 4);
  CHECK(all_of<CodeShown>(setup.news_of(sheet.image())) == std::vector{CodeShown{aimed, 2}});
}

TEST_CASE("the view has the newest frame, the box and what was read in it") {
  Setup setup;
  const auto shown = label(2);
  static_cast<void>(setup.news_of(nothing(), shown.image));
  const CameraView view = setup.worker->view();
  CHECK(view.source == "a script");
  REQUIRE(view.picture);
  CHECK(*view.picture == shown.image);
  CHECK(view.box.width == 480);
  CHECK(view.read.size() == 1);
  CHECK(view.code == shown.code);
  CHECK(view.our_codes == 1);
}

TEST_CASE("a source that goes away is told once, and once when it is back") {
  Setup setup;
  const auto away = failure(ErrorKind::Broken, "unplugged");
  const auto lost = setup.news_of(nothing(), away, away, away);
  CHECK(all_of<SourceLost>(lost).size() == 1);
  CHECK(setup.worker->view().trouble);
  const auto back = setup.news_of(nothing(), nothing());
  CHECK(all_of<SourceBack>(back).size() == 1);
  CHECK_FALSE(setup.worker->view().trouble);
}

TEST_CASE("a picture that cannot be opened is told, and the next one is read") {
  Setup setup;
  const auto shown = label(3);
  const auto news = setup.news_of(failure(ErrorKind::BadInput, "no picture"), shown.image);
  CHECK(all_of<PictureRefused>(news).size() == 1);
  CHECK(all_of<CodeShown>(news).size() == 1);
}

TEST_CASE("with somebody watching, every frame wakes the screen") {
  Setup setup;
  setup.worker->watch(Watched::EveryFrame);
  static_cast<void>(setup.news_of(nothing(), nothing(), nothing()));
  CHECK(setup.wakes == 3);
}

TEST_CASE("the aim can be moved while the worker runs") {
  Setup setup;
  const auto shown = label(4);
  setup.worker->aim_at({0.1, 0.1, 0.2});
  const auto aside = setup.news_of(shown.image);
  CHECK(all_of<CodeShown>(aside).empty());
  setup.worker->aim_at({});
  CHECK(all_of<CodeShown>(setup.news_of(shown.image)).size() == 1);
}

TEST_CASE("a worker ends at once, whether it has just begun or its source waits") {
  const auto start = std::chrono::steady_clock::now();
  for (int i = 0; i < 20; ++i) {
    Setup setup;
    if (i % 2) setup.script->wait_until_taken();
  }
  CHECK(std::chrono::steady_clock::now() - start < milliseconds{9'000});  // it would wait 10 s each
}

TEST_CASE("a frame that differs from the last by less than noise is not read again") {
  Setup setup;
  const GreyImage first = faint(8), second = faint(9);
  FrameChange change;
  REQUIRE(change.differs(first));
  REQUIRE_FALSE(change.differs(second));
  const auto always = [] { return true; };
  const auto code = FrameReader{}.read(first, {}, always).code();
  REQUIRE(code);
  REQUIRE(FrameReader{}.read(second, {}, always).code() != code);
  const auto news = setup.news_of(first, second, second);
  CHECK(all_of<CodeShown>(news) == std::vector{CodeShown{*code, 1}});
  CHECK(setup.worker->view().code == code);
}

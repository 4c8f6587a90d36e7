// Milliseconds of processor a frame, beside plain ZXing-C++ and zbar on the same frames; and what
// a camera before a still picture costs.
//
//   reader_speed

#include <algorithm>
#include <cstdio>
#include <functional>
#include <tuple>
#include <utility>

#include "kiosk/camera/frame_change.hpp"
#include "kiosk/frames/luma.hpp"
#include "labels/reader/frame_reader.hpp"
#include "tests/bench/processor_time.hpp"
#include "tests/generators/cells.hpp"
#include "tests/generators/drawn_symbols.hpp"
#include "tests/peers/peers.hpp"

using namespace rackside;

namespace {

constexpr int frames = 40;
constexpr double budget = 36;

struct Cost {
  double median, worst;
};

Cost cost(const std::vector<GreyImage>& images, const std::function<void(const GreyImage&)>& read) {
  std::vector<double> spent;
  for (const GreyImage& image : images) {
    const double start = bench::milliseconds_spent();
    read(image);
    spent.push_back(bench::milliseconds_spent() - start);
  }
  std::ranges::sort(spent);
  return {spent[spent.size() / 2], spent.back()};
}

void row(const char* name, const std::vector<GreyImage>& images) {
  const Cost ours = cost(images, [](const GreyImage& image) {
    const double limit = bench::milliseconds_spent() + budget;
    static_cast<void>(
        FrameReader{}.read(image, {}, [limit] { return bench::milliseconds_spent() < limit; }));
  });
  const Cost zxing =
      cost(images, [](const GreyImage& image) { std::ignore = tests::read_by_zxing(image); });
  const Cost zbar =
      cost(images, [](const GreyImage& image) { std::ignore = tests::read_by_zbar(image); });
  std::printf("%-34s %6.1f %6.1f   %6.1f %6.1f   %6.1f %6.1f\n", name, ours.median, ours.worst,
              zxing.median, zxing.worst, zbar.median, zbar.worst);
  std::fflush(stdout);
}

std::vector<GreyImage> pictures(tests::Scene scene) {
  tests::Random random(5);
  std::vector<GreyImage> images;
  for (int i = 0; i < frames; ++i) {
    const std::string text(tests::random_code(random).text());
    images.push_back(tests::photograph(tests::symbol_of(text, 1), scene, random).image);
  }
  return images;
}

std::vector<GreyImage> without_label(tests::Scene scene) {
  scene.module_px = 0.01;
  return pictures(scene);
}

std::vector<GreyImage> full_sheet() {
  tests::Random random(6);
  tests::Sheet sheet(1920, 1080);
  for (int place = 0; place < 190; ++place)
    sheet.put(tests::symbol_of(std::string(tests::random_code(random).text()), 1),
              10 + place % 19 * 100, 20 + place / 19 * 105, 3);
  return {sheet.image(), sheet.image(), sheet.image()};
}

// From a camera's YUYV to the decision that nothing is new.
double still_frame() {
  const FrameFormat format{0x56595559, 1280, 720, 2560};  // YUYV
  std::vector<std::uint8_t> bytes(2560 * 720, 100);
  FrameChange change;
  constexpr int count = 200;
  const double start = bench::milliseconds_spent();
  for (int i = 0; i < count; ++i) {
    bytes[static_cast<std::size_t>(i)] ^= 1;
    if (const auto image = luma_of(format, bytes)) static_cast<void>(change.differs(*image));
  }
  return (bench::milliseconds_spent() - start) / count;
}

}  // namespace

int main() {
  std::printf("%-34s %13s   %13s   %13s\n%-34s %6s %6s   %6s %6s   %6s %6s\n", "ms a frame", "ours",
              "ZXing-C++", "zbar", "", "median", "worst", "median", "worst", "median", "worst");
  for (const auto& [name, width, height] :
       {std::tuple{"640x480", 640, 480}, {"1280x720", 1280, 720}, {"1920x1080", 1920, 1080}}) {
    row((std::string(name) + ", clear label").c_str(),
        pictures({.width = width, .height = height}));
    auto hand = tests::tub_in_hand(3.5, 1);
    hand.width = width;
    hand.height = height;
    row((std::string(name) + ", in hand, 3.5 px").c_str(), pictures(hand));
    row((std::string(name) + ", no label").c_str(),
        without_label({.width = width, .height = height}));
  }
  row("1920x1080, sheet of 190 labels", full_sheet());
  const double still = still_frame();
  std::printf(
      "\nstill picture, 1280x720: %.2f ms a frame, %.2f %% of a core at 10 frames a second\n",
      still, still * 10 / 1000 * 100);
}

#include "labels/reader/symptoms.hpp"

#include <algorithm>

#include "labels/reader/frame_reader.hpp"
#include "tests/frame.hpp"
#include "tests/generators/cells.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

// A frame of a scene, and its symbol as if it had been found where it is but not read.
struct Case {
  Plane plane;
  Unread unread;
};

Case found_in(const Scene& scene, std::uint64_t seed) {
  Random random(seed);
  const auto picture =
      photograph(symbol_of(std::string(random_code(random).text()), 1), scene, random);
  return {smoothed(as_plane(picture.image), 1), {1, {picture.corners, {}, {}}, 1}};
}

// What is said most often over some frames of the scene.
std::optional<Guidance> usual_guidance(const Scene& scene) {
  std::vector<std::optional<Guidance>> said;
  for (std::uint64_t seed = 1; seed <= 9; ++seed) {
    const Case one = found_in(scene, seed);
    said.push_back(guidance_for(measure(one.plane, one.unread)));
  }
  return *std::ranges::max_element(
      said, {}, [&](const auto& guidance) { return std::ranges::count(said, guidance); });
}

// What the reader says about the frames of a scene that it cannot read.
struct Said {
  int unread = 0;
  std::vector<Guidance> words;

  [[nodiscard]] auto times(Guidance guidance) const { return std::ranges::count(words, guidance); }
  [[nodiscard]] auto total() const { return std::ssize(words); }
};

Said said_about(const Scene& scene, int frames) {
  Random random(8);
  Said said;
  for (int i = 0; i < frames; ++i) {
    const auto picture =
        photograph(symbol_of(std::string(random_code(random).text()), 1), scene, random);
    const Reading reading = FrameReader{}.read(picture.image, {}, [] { return true; });
    said.unread += !reading.code();
    if (reading.guidance) said.words.push_back(*reading.guidance);
  }
  return said;
}

}  // namespace

TEST_CASE("what is measured on a symbol is what it was drawn with") {
  const Case plain = found_in({}, 3);
  const Symptoms symptoms = measure(plain.plane, plain.unread);
  CHECK(symptoms.module_px == Approx(4).epsilon(0.03));
  CHECK(symptoms.contrast == Approx(160).epsilon(0.15));
  CHECK(symptoms.crispness > 0.8);
  CHECK(symptoms.glare == 0);
  CHECK(symptoms.squeeze == Approx(1).margin(0.03));
  const Case tilted = found_in({.module_px = 5, .tilt = 60}, 3);
  CHECK(measure(tilted.plane, tilted.unread).squeeze < 0.8);
}

TEST_CASE("each disturbance gets the words that help against it") {
  CHECK(usual_guidance({}) == std::nullopt);
  CHECK(usual_guidance({.module_px = 2}) == Guidance::ComeCloser);
  CHECK(usual_guidance({.contrast = 14}) == Guidance::MoreLight);
  CHECK(usual_guidance({.glare = 0.7}) == Guidance::TiltIt);
  CHECK(usual_guidance({.blur = 4}) == Guidance::HoldStill);
}

TEST_CASE("guidance has three words at most") {
  for (const Guidance guidance : {Guidance::ComeCloser, Guidance::MoreLight, Guidance::TiltIt,
                                  Guidance::FaceIt, Guidance::HoldStill}) {
    const auto words = guidance_words(guidance);
    CHECK_FALSE(words.empty());
    CHECK(std::ranges::count(words, ' ') <= 2);
  }
}

TEST_CASE("a label that is too far away to be read makes the reader say so") {
  const Said said = said_about(tub_in_hand(2, 1), 12);
  REQUIRE(said.unread > 6);
  CHECK(said.times(Guidance::ComeCloser) * 3 > said.unread);  // the others are not found at all
  CHECK(said.times(Guidance::ComeCloser) == said.total());
}

TEST_CASE("a label under a glare too large to be read makes the reader say so") {
  Scene scene = tub_in_hand(4, 1);
  scene.glare = 0.8;
  const Said said = said_about(scene, 16);
  REQUIRE(said.unread > 6);
  CHECK(said.times(Guidance::TiltIt) * 4 > said.unread * 3);
  CHECK(said.times(Guidance::TiltIt) + 1 >= said.total());
}

TEST_CASE("a label out of focus is read now and then, or makes the reader say so") {
  const Said said = said_about({.blur = 3}, 16);
  CHECK(said.unread <= 13);
  CHECK(said.times(Guidance::HoldStill) >= 4);
  CHECK(said.times(Guidance::HoldStill) == said.total());
}

TEST_CASE("a cluttered view without a label hardly ever gets words") {
  const Said said = said_about({.module_px = 0.01}, 24);
  CHECK(said.unread == 24);
  CHECK(said.total() <= 4);
}

TEST_CASE("a label that is read needs no guidance, and an empty view gets none") {
  Random random(9);
  const auto picture = photograph(symbol_of("T000000", 1), {}, random);
  CHECK_FALSE(FrameReader{}.read(picture.image, {}, [] { return true; }).guidance);
  const GreyImage empty{320, 240, std::vector<std::uint8_t>(320 * 240, 120)};
  CHECK_FALSE(FrameReader{}.read(empty, {}, [] { return true; }).guidance);
}

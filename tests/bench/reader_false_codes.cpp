// Looks for codes where there are none.
//
//   reader_false_codes [LAST PART, default 100] [FIRST PART] [FILE] [SIDE in px, default 170]
//
// A part is 10,000 frames, its number the seed. What each part gave is added to FILE as one line,
// and a part that stands there is not shown again: a long run can be ended and gone on with. Each
// SIDE needs a file of its own.
//
// Each picture is shown as a camera would show it, for ten frames: with fresh noise and in every
// quarter turn; the reader has 3 ms of processor a frame for these small pictures (of another side,
// in proportion to their area) and lets its ways take turns, as in the kiosk. Prints how often each
// kind of picture gave a code that is not in it (there should be none), and how many damaged labels
// were read all the same.

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <map>
#include <sstream>
#include <string>

#include "labels/reader/frame_reader.hpp"
#include "tests/bench/processor_time.hpp"
#include "tests/generators/rubbish.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

constexpr std::array names{"noise",  "finders around chance", "print",       "bars",
                           "matrix", "foreign labels",        "nearly ours", "damaged labels"};

constexpr int frames_each = 10;
constexpr long frames_a_part = 10'000;
constexpr double budget = 3;  // milliseconds, at the usual side

// A quarter turn and some noise more: shown again by a hand and a sensor.
GreyImage shown_again(const GreyImage& image, Random& random) {
  GreyImage turned{image.height, image.width, image.pixels};
  const int noise = 1 + static_cast<int>(random() % 16);
  std::uint64_t bits = random();
  for (int y = 0; y < turned.height; ++y)
    for (int x = 0; x < turned.width; ++x) {
      bits = bits * 6364136223846793005u + 1442695040888963407u;
      const int level =
          image.at(y, image.height - 1 - x) + static_cast<int>(bits >> 40) % noise - noise / 2;
      turned.pixels[static_cast<std::size_t>(y * turned.width + x)] =
          static_cast<std::uint8_t>(std::clamp(level, 0, 255));
    }
  return turned;
}

struct Tally {
  long frames = 0, wrong = 0, right = 0;
};
using Tallies = std::array<Tally, rubbish_kinds>;

void show(Tally& tally, RubbishPicture picture, FrameReader& reader, Random& random) {
  const double part = static_cast<double>(picture.image.width) / rubbish_side;
  for (int frame = 0; frame < frames_each; ++frame) {
    const double limit = bench::milliseconds_spent() + budget * part * part;
    const auto code =
        reader.read(picture.image, {}, [&] { return bench::milliseconds_spent() < limit; }).code();
    ++tally.frames;
    if (code) (code == picture.code ? tally.right : tally.wrong) += 1;
    picture.image = shown_again(picture.image, random);
  }
}

Tallies run_part(long number, int side) {
  Random random(static_cast<std::uint64_t>(number));
  Tallies tallies;
  FrameReader reader;
  for (long i = 0; i < frames_a_part / frames_each; ++i) {
    const auto kind = static_cast<std::size_t>(i % rubbish_kinds);
    show(tallies[kind], rubbish(static_cast<Rubbish>(kind), random, side), reader, random);
  }
  return tallies;
}

std::map<long, Tallies> parts_in(const std::string& file) {
  std::map<long, Tallies> parts;
  std::ifstream lines(file);
  for (std::string line; std::getline(lines, line);) {
    std::istringstream words(line);
    long number = 0;
    Tallies tallies;
    words >> number;
    for (Tally& tally : tallies) words >> tally.frames >> tally.wrong >> tally.right;
    if (words) parts[number] = tallies;  // a line cut short is a part to be shown again
  }
  return parts;
}

void keep(const std::string& file, long number, const Tallies& tallies) {
  std::ofstream lines(file, std::ios::app);
  lines << number;
  for (const Tally& tally : tallies)
    lines << ' ' << tally.frames << ' ' << tally.wrong << ' ' << tally.right;
  lines << std::endl;
}

void add(Tallies& sum, const Tallies& part) {
  for (std::size_t kind = 0; kind < sum.size(); ++kind) {
    sum[kind].frames += part[kind].frames;
    sum[kind].wrong += part[kind].wrong;
    sum[kind].right += part[kind].right;
  }
}

void print(const Tallies& tallies) {
  std::printf("%-22s %10s %10s %10s\n", "pictures of", "shown", "false", "read");
  for (std::size_t kind = 0; kind < tallies.size(); ++kind)
    std::printf("%-22s %10ld %10ld %10ld\n", names[kind], tallies[kind].frames, tallies[kind].wrong,
                tallies[kind].right);
}

}  // namespace

int main(int count, char** words) {
  const long last = count > 1 ? std::atol(words[1]) : 100;
  const long first = count > 2 ? std::atol(words[2]) : 1;
  const std::string file = count > 3 ? words[3] : "";
  const int side = count > 4 ? std::atoi(words[4]) : rubbish_side;
  const auto known = parts_in(file);
  Tallies sum;
  for (long number = first; number <= last; ++number) {
    const bool shown = known.contains(number);
    const Tallies part = shown ? known.at(number) : run_part(number, side);
    if (!shown && !file.empty()) keep(file, number, part);
    add(sum, part);
  }
  print(sum);
}

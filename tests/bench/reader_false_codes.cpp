// Looks for codes where there are none.
//
//   reader_false_codes [PICTURES, default 1000000] [SEED]
//
// Prints how often each kind of picture gave a code that is not in it (there should be none), and
// how many damaged labels were read all the same.

#include <array>
#include <cstdio>
#include <cstdlib>

#include "labels/reader/frame_reader.hpp"
#include "tests/generators/rubbish.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

constexpr std::array names{"noise",  "finders around chance", "print",       "bars",
                           "matrix", "foreign labels",        "nearly ours", "damaged labels"};

struct Tally {
  long pictures = 0, wrong = 0, right = 0;
};

void print(const std::array<Tally, rubbish_kinds>& tallies) {
  std::printf("%-22s %10s %10s %10s\n", "pictures of", "shown", "false", "read");
  for (std::size_t kind = 0; kind < tallies.size(); ++kind)
    std::printf("%-22s %10ld %10ld %10ld\n", names[kind], tallies[kind].pictures,
                tallies[kind].wrong, tallies[kind].right);
  std::fflush(stdout);
}

}  // namespace

int main(int count, char** words) {
  const long pictures = count > 1 ? std::atol(words[1]) : 1'000'000;
  Random random(count > 2 ? std::strtoull(words[2], nullptr, 10) : 1);
  std::array<Tally, rubbish_kinds> tallies;
  FrameReader reader;
  for (long i = 0; i < pictures; ++i) {
    const auto kind = static_cast<std::size_t>(i % rubbish_kinds);
    const auto picture = rubbish(static_cast<Rubbish>(kind), random);
    const auto code = reader.read(picture.image, {}, [] { return true; }).code();
    ++tallies[kind].pictures;
    if (code) (code == picture.code ? tallies[kind].right : tallies[kind].wrong) += 1;
    if (i % 50'000 == 49'999) print(tallies);
  }
  print(tallies);
}

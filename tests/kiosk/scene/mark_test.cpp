#include "kiosk/scene/mark.hpp"

#include <set>

#include "tests/frame.hpp"

using namespace rackside;
using kiosk::Mark;
using kiosk::mark_of;
using kiosk::strokes;

namespace {

constexpr auto last = static_cast<int>(Mark::TakenBack);

}  // namespace

TEST_CASE("every sign has a mark of its own, and no other record shares it") {
  std::set<Mark> marks;
  for (const rackside::Sign sign : all_signs) marks.insert(mark_of(SignSet{sign}));
  CHECK(marks.size() == all_signs.size());
  for (const Details& other : {Details{Looked{}}, Details{Moulted{}}, Details{ShedFound{}},
                               Details{Offered{}}, Details{Misted{}}, Details{Died{}}})
    CHECK_FALSE(marks.contains(mark_of(other)));
}

TEST_CASE("of several signs the one that cannot wait gives the mark") {
  using enum rackside::Sign;
  CHECK(mark_of(SignSet{DarkAbdomen, OnItsBack, PlumpAbdomen}) == Mark::OnItsBack);
  CHECK(mark_of(SignSet{PlumpAbdomen, DarkAbdomen}) == Mark::Dark);
}

TEST_CASE("every mark is drawn inside its square, and no two alike") {
  for (int i = 1; i <= last; ++i) {
    const auto& drawing = strokes(static_cast<Mark>(i));
    CHECK_FALSE(drawing.empty());
    for (const auto& stroke : drawing)
      for (const auto& point : stroke.points) {
        INFO("mark " << i << " at " << point.x << ", " << point.y);
        CHECK((point.x >= 0 && point.x <= 1 && point.y >= 0 && point.y <= 1));
      }
    for (int j = 1; j < i; ++j) CHECK(drawing != strokes(static_cast<Mark>(j)));
  }
}

// Every screen at every size, measured: nothing clipped, nothing on top of something else, nothing
// too small to hit, nothing too faint to read.

#include <set>
#include <sstream>

#include "fonts/font_files.hpp"
#include "kiosk/draw/font_book.hpp"
#include "kiosk/hands/focus.hpp"
#include "kiosk/screens/screens.hpp"
#include "tests/frame.hpp"
#include "tests/kiosk/screens/collections.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

const FontBook& fonts() {
  static const auto book = FontBook::open(running_program()).value();
  return *book;
}

// Calls `check` with every screen in every situation at every size.
template <class Check>
void everywhere(const Check& check) {
  for (const Situation& situation : situations()) {
    const Model model = situation.model();
    for (const Panel& panel : panels()) {
      const Scene scene = compose(model, panel, fonts());
      check(scene, panel,
            situation.name + " at " + std::to_string(panel.width) + "x" +
                std::to_string(panel.height));
    }
  }
}

std::vector<Text> texts_of(const Scene& scene) {
  std::vector<Text> texts;
  for (const Item& item : scene.items)
    if (const auto* text = std::get_if<Text>(&item)) texts.push_back(*text);
  return texts;
}

// The ink of a line of text is lower than its line box; lines may lean on each other's air.
Box inked(const Text& text) {
  const double air = text.box.height * 0.16;
  return {text.box.x, text.box.y + air, text.box.width, text.box.height - 2 * air};
}

}  // namespace

TEST_CASE("no text leaves its place or the panel") {
  std::ostringstream broken;
  everywhere([&](const Scene& scene, const Panel& panel, const std::string& where) {
    const Box whole{0, 0, static_cast<double>(panel.width), static_cast<double>(panel.height)};
    for (const Text& text : texts_of(scene)) {
      const bool across =
          text.box.x >= text.within.x - 1 && text.box.right() <= text.within.right() + 1;
      if (!whole.holds(text.box, 1) || !across)
        broken << where << ": \"" << text.text << "\" leaves its place\n";
    }
  });
  INFO(broken.str());
  CHECK(broken.str().empty());
}

TEST_CASE("no line is finer than the panel shows") {
  // One with thousands of points, for a moult that may be years off, takes half a second to draw.
  std::ostringstream broken;
  everywhere([&](const Scene& scene, const Panel& panel, const std::string& where) {
    for (const Item& item : scene.items)
      if (const auto* path = std::get_if<Path>(&item))
        if (path->points.size() > static_cast<std::size_t>(panel.width))
          broken << where << ": a line of " << path->points.size() << " points\n";
  });
  INFO(broken.str());
  CHECK(broken.str().empty());
}

TEST_CASE("what happened and what to do about it is told to its end") {
  constexpr std::string_view ellipsis = "…";
  std::ostringstream broken;
  for (const Situation& situation : situations()) {
    const Model model = situation.model();
    const auto notice = telling(model);
    if (!notice) continue;
    for (const Panel& panel : panels())
      for (const Text& text : texts_of(compose(model, panel, fonts())))
        if (text.text.ends_with(ellipsis) &&
            notice->sentence.find(text.text.substr(0, text.text.size() - ellipsis.size())) !=
                std::string::npos)
          broken << situation.name << " at " << panel.width << "x" << panel.height << ": \""
                 << text.text << "\"\n";
  }
  INFO(broken.str());
  CHECK(broken.str().empty());
}

TEST_CASE("no text lies on another") {
  std::ostringstream broken;
  everywhere([&](const Scene& scene, const Panel&, const std::string& where) {
    const auto texts = texts_of(scene);
    for (std::size_t i = 0; i < texts.size(); ++i)
      for (std::size_t j = i + 1; j < texts.size(); ++j)
        if (inked(texts[i]).meets(inked(texts[j])))
          broken << where << ": \"" << texts[i].text << "\" on \"" << texts[j].text << "\"\n";
  });
  INFO(broken.str());
  CHECK(broken.str().empty());
}

TEST_CASE(
    "every place to touch is at least 15 mm high, 15 mm wide unless it is a letter, on the panel") {
  // Colle & Hiszem 2004: 20 mm suffice for someone standing; never under 15 mm for an action. The
  // letters of the on-screen keyboards are as wide as the panel allows.
  std::ostringstream broken;
  everywhere([&](const Scene& scene, const Panel& panel, const std::string& where) {
    const Box whole{0, 0, static_cast<double>(panel.width), static_cast<double>(panel.height)};
    for (const Target& target : scene.targets) {
      const bool letter = std::holds_alternative<Typed>(target.intent) ||
                          std::holds_alternative<Erase>(target.intent) ||
                          std::holds_alternative<Shift>(target.intent);
      const double wide = target.box.width / panel.pixels_per_mm;
      const double high = target.box.height / panel.pixels_per_mm;
      const double least_wide =
          letter ? 9.6 : 14.9;  // 9.6 mm: Parhi et al. 2006, serial one-thumb targets
      const double least_high = letter ? 9.6 : 14.9;
      if (wide < least_wide || high < least_high || !whole.holds(target.box, 1))
        broken << where << ": \"" << target.word << "\" is " << wide << " by " << high << " mm\n";
    }
  });
  INFO(broken.str());
  CHECK(broken.str().empty());
}

TEST_CASE("no two places to touch overlap") {
  std::ostringstream broken;
  everywhere([&](const Scene& scene, const Panel&, const std::string& where) {
    const auto& targets = scene.targets;
    for (std::size_t i = 0; i < targets.size(); ++i)
      for (std::size_t j = i + 1; j < targets.size(); ++j)
        if (targets[i].box.inset(1).meets(targets[j].box.inset(1)))
          broken << where << ": \"" << targets[i].word << "\" and \"" << targets[j].word << "\"\n";
  });
  INFO(broken.str());
  CHECK(broken.str().empty());
}

TEST_CASE("every text stands out 7 to 1 from its ground in every palette") {
  // WCAG 2.2, success criterion 1.4.6 (AAA).
  std::ostringstream broken;
  everywhere([&](const Scene& scene, const Panel&, const std::string& where) {
    for (const Text& text : texts_of(scene))
      for (const PaletteName name : {PaletteName::Day, PaletteName::Dusk, PaletteName::Night}) {
        const Palette& colours = palette(name);
        const double ratio = contrast(colours.of(text.ink), colours.of(text.ground));
        if (ratio < 7) broken << where << ": \"" << text.text << "\" " << ratio << "\n";
      }
  });
  INFO(broken.str());
  CHECK(broken.str().empty());
}

TEST_CASE("words that must be read are tall enough at arm's length") {
  // ISO 9241-3: at least 16 minutes of arc; at 600 mm that is 2.8 mm. Tile words may shrink to 2.2
  // mm (16 minutes at 470 mm), where the hand that taps them is.
  std::ostringstream broken;
  everywhere([&](const Scene& scene, const Panel& panel, const std::string& where) {
    for (const Text& text : texts_of(scene)) {
      const double capital =
          text.style.pixels * fonts().capital_height(text.style.face) / panel.pixels_per_mm;
      if (capital < 2.19) broken << where << ": \"" << text.text << "\" " << capital << " mm\n";
    }
  });
  INFO(broken.str());
  CHECK(broken.str().empty());
}

TEST_CASE("the arrow keys reach every place to touch") {
  std::ostringstream broken;
  everywhere([&](const Scene& scene, const Panel&, const std::string& where) {
    std::set<std::size_t> reached{0};
    for (std::size_t before = 0; before != reached.size();) {
      before = reached.size();
      for (const std::size_t from : std::set(reached))
        for (const Direction way :
             {Direction::Left, Direction::Right, Direction::Up, Direction::Down})
          reached.insert(next_focus(scene, from, way).value_or(0));
    }
    for (std::size_t i = 0; i < scene.targets.size(); ++i)
      if (!reached.contains(i))
        broken << where << ": \"" << scene.targets[i].word << "\" is out of reach\n";
  });
  INFO(broken.str());
  CHECK(broken.str().empty());
}

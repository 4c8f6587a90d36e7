// What a long report says stands on its pages, all of it and in its order.

#include <algorithm>
#include <iterator>
#include <sstream>

#include "fonts/font_files.hpp"
#include "kiosk/draw/font_book.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/cover_view.hpp"
#include "tests/frame.hpp"
#include "tests/kiosk/screens/away.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

std::vector<std::string> words_of(const std::string& text) {
  std::istringstream in(text);
  return {std::istream_iterator<std::string>(in), {}};
}

std::vector<std::string> words_on(const Scene& scene) {
  std::vector<std::string> words;
  for (const Item& item : scene.items)
    if (const auto* text = std::get_if<Text>(&item))
      for (std::string& word : words_of(text->text)) words.push_back(std::move(word));
  return words;
}

std::vector<std::string> words_on_all_pages(Model model, const Panel& panel,
                                            const TextMetrics& metrics) {
  std::vector<std::string> all, before;
  for (model.list_page = 0;; ++model.list_page) {
    std::vector<std::string> words = words_on(compose(model, panel, metrics));
    if (words == before) return all;  // there is no further page
    all.insert(all.end(), words.begin(), words.end());
    before = std::move(words);
  }
}

Model report() {
  for (const Situation& situation : with_away({}))
    if (situation.name == "returned") return situation.model();
  FAIL("there is no report");
  return {};
}

}  // namespace

TEST_CASE("every word of a report stands on its pages, in its order, at every size") {
  static const auto fonts = FontBook::open(running_program()).value();
  const Model model = report();
  const ReturnView view = view_return(model);
  REQUIRE(view.parts.size() > 10);
  std::string told;
  for (const ToldPart& part : view.parts) {
    told += part.title + ' ';
    for (const std::string& sentence : part.sentences) told += sentence + ' ';
  }
  for (const Panel& panel : panels()) {
    const auto words = words_on_all_pages(model, panel, *fonts);
    // What stands on every page, its heading and its keys, is passed over. A line that was missing
    // would let the last ones run out of words.
    auto at = words.begin();
    for (const std::string& word : words_of(told)) {
      at = std::find(at, words.end(), word);
      INFO(word << " on a panel of " << panel.width << " by " << panel.height);
      REQUIRE(at != words.end());
      ++at;
    }
  }
}

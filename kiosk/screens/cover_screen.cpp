// Somebody who stands in: what it will need before, what was done after.

#include "kiosk/screens/screens.hpp"
#include "kiosk/screens/told_part.hpp"

namespace rackside::kiosk {
namespace {

std::vector<KeyRow> cover_keys(const CoverView& view) {
  std::vector<KeyRow> keys;
  if (view.shown) {
    keys.push_back({view.printing ? "printing" : "print", PrintCover{}, Weight::First});
    keys.push_back({view.end_word, EndCover{}});
  }
  keys.push_back({view.shown ? "plan more" : "plan a cover", Show{ScreenName::NewCover},
                  view.shown ? Weight::Plain : Weight::First});
  if (view.report) keys.push_back({"report", Show{ScreenName::Returned}});
  if (view.more) keys.push_back({"next one", NextCover{}});
  return keys;
}

std::vector<KeyRow> return_keys(const ReturnView& view) {
  std::vector<KeyRow> keys;
  if (view.ready)
    keys.push_back({view.printing ? "printing" : "print", PrintCover{}, Weight::First});
  if (view.more) keys.push_back({"one before", NextCover{}});
  return keys;
}

// Upright panels are too narrow for more than three beside each other.
void keys_below(Composer& composer, Box& box, const std::vector<KeyRow>& keys) {
  constexpr std::size_t most_upright = 3;
  if (keys.empty()) return;
  if (!composer.panel().portrait() || keys.size() <= most_upright)
    return key_row(composer, box, keys);
  const auto middle = keys.begin() + most_upright;
  key_row(composer, box, {middle, keys.end()});
  key_row(composer, box, {keys.begin(), middle});
}

void told_page(Composer& composer, const Model& model, std::string_view title,
               const std::vector<KeyRow>& keys, const std::vector<ToldPart>& parts) {
  Box box = page(composer);
  heading(composer, box, title);
  keys_below(composer, box, keys);
  notice_line(composer, box, telling(model));
  told_parts(composer, box, parts, model.list_page);
}

}  // namespace

void compose_cover(Composer& composer, const Model& model) {
  const CoverView view = view_cover(model);
  told_page(composer, model, "Cover", cover_keys(view), view.parts);
}

void compose_returned(Composer& composer, const Model& model) {
  const ReturnView view = view_return(model);
  told_page(composer, model, "Report on a cover", return_keys(view), view.parts);
}

}  // namespace rackside::kiosk

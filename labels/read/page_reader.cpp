#include "labels/read/page_reader.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <vector>

#include "labels/reader/library_pass.hpp"
#include "labels/reader/plane.hpp"

namespace rackside {
namespace {

// A window and how far the next one is moved: symbols up to their difference are whole in one of
// them, larger ones at a smaller scale.
constexpr int window = 640;
constexpr int stride = 400;

struct Found {
  Code code;
  Point place;  // on the full page
};

class Search {
 public:
  void add(const std::vector<Sighting>& sightings, double scale, double left, double top) {
    for (const Sighting& sighting : sightings) {
      const Point centre = sighting.centre();
      const Point place{(left + centre.x) * scale, (top + centre.y) * scale};
      if (sighting.code)
        codes_.try_emplace(*sighting.code, place);
      else
        note_foreign(place, scale);
    }
  }

  PageSightings result() const {
    std::vector<Found> found;
    for (const auto& [code, place] : codes_) found.push_back({code, place});
    // Symbols of one row rarely stand at exactly one height.
    constexpr double row = 20;
    std::ranges::sort(found, [](const Found& a, const Found& b) {
      const auto line_a = static_cast<int>(a.place.y / row);
      const auto line_b = static_cast<int>(b.place.y / row);
      return line_a != line_b ? line_a < line_b : a.place.x < b.place.x;
    });
    PageSightings sightings{{}, static_cast<int>(foreign_.size())};
    for (const Found& one : found) sightings.codes.push_back(one.code);
    return sightings;
  }

 private:
  // The same symbol seen in two windows counts once.
  void note_foreign(Point place, double scale) {
    const double near = 20 * scale;
    for (const Point& other : foreign_)
      if (std::abs(other.x - place.x) < near && std::abs(other.y - place.y) < near) return;
    foreign_.push_back(place);
  }

  std::map<Code, Point> codes_;
  std::vector<Point> foreign_;
};

bool is_blank(const GreyImage& image) {
  const auto [darkest, lightest] = std::ranges::minmax(image.pixels);
  constexpr int least_contrast = 20;
  return lightest - darkest < least_contrast;
}

using Reader = std::vector<Sighting> (*)(const GreyImage&);

std::vector<Sighting> read_plainly(const GreyImage& image) {
  constexpr int most_symbols = 255;  // what the library counts up to
  return library_pass(image, most_symbols);
}

void look_through_windows(Search& search, Reader reader, const GreyImage& image, double scale) {
  const auto last = [](int length) { return std::max(0, length - window); };
  const auto next = [](int at, int end) {
    return at == end ? end + 1 : std::min(at + stride, end);
  };
  for (int top = 0; top <= last(image.height); top = next(top, last(image.height)))
    for (int left = 0; left <= last(image.width); left = next(left, last(image.width))) {
      const GreyImage part = cut_out(image, left, top, std::min(window, image.width - left),
                                     std::min(window, image.height - top));
      if (!is_blank(part)) search.add(reader(part), scale, left, top);
    }
}

PageSightings search_page(const GreyImage& page, Reader reader) {
  Search search;
  std::optional<GreyImage> smaller;
  const GreyImage* image = &page;
  for (double scale = 1;; scale *= 2) {
    look_through_windows(search, reader, *image, scale);
    if (image->width <= window && image->height <= window) break;
    smaller = shrunk(*image, 2);
    image = &*smaller;
  }
  return search.result();
}

}  // namespace

PageSightings read_page(const GreyImage& page) {
  if (page.empty()) return {};
  const PageSightings seen = search_page(page, read_plainly);
  return seen.codes.empty() ? search_page(page, read_symbols) : seen;
}

}  // namespace rackside

#include "kiosk/screens/told_part.hpp"

#include <algorithm>

namespace rackside::kiosk {
namespace {

constexpr double air_mm = 1.6;  // above a part

struct Line {
  std::string words;
  bool title = false;
};

// What of one part stands on one page.
struct Piece {
  std::vector<Line> lines;
  double height = 0;
  std::optional<Intent> touch;
};

using Page = std::vector<Piece>;

Style style_of_line(const Composer& composer, const Line& line) {
  return line.title ? composer.style(Step::Instruction, Face::Bold) : composer.style(Step::Record);
}

double height_of(const Composer& composer, const Line& line) {
  return composer.line_height(style_of_line(composer, line));
}

std::vector<Line> lines_of(const Composer& composer, const ToldPart& part, double width) {
  std::vector<Line> lines;
  const auto add = [&](const std::string& words, bool title) {
    for (std::string& broken :
         composer.broken(words, style_of_line(composer, {words, title}), width))
      lines.push_back({std::move(broken), title});
  };
  add(part.title, true);
  for (const std::string& sentence : part.sentences) add(sentence, false);
  return lines;
}

// Fills pages of one size, part by part.
class Pager {
 public:
  Pager(const Composer& composer, const Box& box) : composer_(composer), box_(box) {}

  void add(const ToldPart& part) {
    std::vector<Line> lines = lines_of(composer_, part, box_.width);
    // In one piece where a page holds it; else a title at least does not stand alone at a foot.
    const double whole = height_of(lines, lines.size(), part);
    const double least = height_of(lines, std::min<std::size_t>(2, lines.size()), part);
    if (used_ + (whole <= box_.height ? whole : least) > box_.height) turn();
    for (std::size_t begin = 0; begin < lines.size();) {
      const std::size_t count = fitting(lines, begin);
      const std::vector<Line> some(lines.begin() + static_cast<std::ptrdiff_t>(begin),
                                   lines.begin() + static_cast<std::ptrdiff_t>(begin + count));
      const double height = height_of(some, some.size(), part);
      pages_.back().push_back({some, height, part.touch});
      used_ += height;
      begin += count;
      if (begin < lines.size()) turn();
    }
  }
  [[nodiscard]] const std::vector<Page>& pages() const { return pages_; }

 private:
  void turn() {
    if (pages_.back().empty()) return;
    pages_.emplace_back();
    used_ = 0;
  }
  [[nodiscard]] double height_of(const std::vector<Line>& lines, std::size_t count,
                                 const ToldPart& part) const {
    double height = composer_.mm(air_mm);
    for (std::size_t i = 0; i < count; ++i) height += kiosk::height_of(composer_, lines[i]);
    return part.touch ? std::max(height, composer_.mm(least_target_mm + gap_mm)) : height;
  }
  // At least one, so that it ends on any panel.
  [[nodiscard]] std::size_t fitting(const std::vector<Line>& lines, std::size_t begin) const {
    double height = used_ + composer_.mm(air_mm);
    std::size_t count = 0;
    while (begin + count < lines.size()) {
      height += kiosk::height_of(composer_, lines[begin + count]);
      if (height > box_.height && count > 0) break;
      ++count;
    }
    return count;
  }

  const Composer& composer_;
  Box box_;
  std::vector<Page> pages_{1};
  double used_ = 0;
};

void draw(Composer& composer, Box box, const Piece& piece) {
  if (piece.touch) {
    Box target = box;
    target.height -= composer.mm(gap_mm);
    composer.touch(target, piece.lines.front().words, *piece.touch);
  }
  composer.rule(box);
  box.take_top(composer.mm(air_mm));
  for (const Line& line : piece.lines) {
    const Box place = box.take_top(height_of(composer, line));
    composer.text(place, line.words, style_of_line(composer, line),
                  line.title && piece.touch ? Ink::Accent : Ink::Text);
  }
}

std::vector<Page> paged(const Composer& composer, const Box& box,
                        const std::vector<ToldPart>& parts) {
  Pager pager(composer, box);
  for (const ToldPart& part : parts) pager.add(part);
  return pager.pages();
}

}  // namespace

void told_parts(Composer& composer, Box box, const std::vector<ToldPart>& parts, int wanted) {
  std::vector<Page> list = paged(composer, box, parts);
  if (list.size() > 1) {
    // The keys take width, and with it more pages.
    Box beside = box;
    beside.take_right(page_keys_width(composer, box));
    list = paged(composer, beside, parts);
  }
  const Pages pages = pages_of(list.size(), 1, wanted);
  page_keys(composer, box, pages);
  for (const Piece& piece : list[pages.page]) draw(composer, box.take_top(piece.height), piece);
}

}  // namespace rackside::kiosk

#include "labels/cards/caution_block.hpp"

#include "core/care/cautions.hpp"

namespace rackside {
namespace {

constexpr double largest_letters = 3;  // millimetres; nobody reads it from across the room

std::vector<std::string> broken(const std::string& sentence, double ems, const PangoText& text) {
  std::vector<std::string> lines{""};
  for (std::size_t begin = 0; begin < sentence.size();) {
    const std::size_t end = std::min(sentence.find(' ', begin), sentence.size());
    const std::string word = sentence.substr(begin, end - begin);
    const std::string longer = lines.back().empty() ? word : lines.back() + ' ' + word;
    if (lines.back().empty() || text.width(Face::Text, longer) <= ems)
      lines.back() = longer;
    else
      lines.push_back(word);
    begin = end + 1;
  }
  return lines;
}

CautionBlock broken_at(double size, double width, const PangoText& text) {
  CautionBlock block{.size = size, .lines = {}};
  for (const std::string& sentence : general_cautions())
    for (std::string& line : broken(sentence, width / size, text))
      block.lines.push_back(std::move(line));
  return block;
}

}  // namespace

CautionBlock fit_cautions(const Box& box, const PangoText& text) {
  CautionBlock block = broken_at(largest_letters, box.width, text);
  while (static_cast<double>(block.lines.size()) * block.size * line_ems > box.height)
    block = broken_at(block.size * 0.97, box.width, text);
  return block;
}

void paint_cautions(cairo_t* canvas, const Box& box, const PangoText& text) {
  const CautionBlock block = fit_cautions(box, text);
  double y = box.y + baseline_ems * block.size;
  for (const std::string& line : block.lines) {
    text.draw(canvas, Face::Text, block.size, box.x, y, line);
    y += block.size * line_ems;
  }
}

}  // namespace rackside

#include "labels/handover/page_flow.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "labels/render/paint.hpp"

namespace rackside {
namespace {

constexpr double margin = 14;  // millimetres; room for a pin or a punch
constexpr double foot_room = 9;
constexpr double tick = 5;         // side of a box to tick
constexpr double tick_room = 8.5;  // with the white beside it

double line_height(double size) { return size * line_ems; }

// Bytes of the UTF-8 character that begins at `at`.
std::size_t character_at(std::string_view text, std::size_t at) {
  std::size_t length = 1;
  while (at + length < text.size() &&
         (static_cast<unsigned char>(text[at + length]) & 0xC0u) == 0x80u)
    ++length;
  return length;
}

// As much of `word` as fits, at least one character.
std::size_t fitting(std::string_view word, double ems, Face face, const TextRuler& ruler) {
  std::size_t end = character_at(word, 0);
  while (end < word.size()) {
    const std::size_t next = end + character_at(word, end);
    if (ruler.width(face, word.substr(0, next)) > ems) break;
    end = next;
  }
  return end;
}

void paint_page(cairo_t* canvas, const Flow& flow, int number, const PangoText& text) {
  const FlowPage& page = flow.pages[static_cast<std::size_t>(number)];
  for (const FlowText& line : page.texts)
    text.draw(canvas, line.face, line.size, line.x, line.y, line.text);
  for (const FlowRule& rule : page.rules) {
    cairo_rectangle(canvas, rule.x, rule.y, rule.width, rule.thick);
    cairo_fill(canvas);
  }
  cairo_set_line_width(canvas, 0.35);
  for (const FlowBox& box : page.boxes) {
    cairo_rectangle(canvas, box.x, box.y, box.side, box.side);
    cairo_stroke(canvas);
  }
  for (const FlowSymbol& symbol : page.symbols)
    paint_symbol(canvas, make_symbol(symbol.code, symbol.size.version), symbol.x, symbol.y,
                 symbol.size.module);
}

}  // namespace

FlowWriter::FlowWriter(double width, double height, Resolution resolution, const TextRuler& ruler)
    : flow_{width, height, {}, {}}, resolution_(resolution), ruler_(ruler) {
  new_page();
}

double FlowWriter::text_width() const { return flow_.width - 2 * margin; }

void FlowWriter::new_page() {
  flow_.pages.emplace_back();
  y_ = margin;
}

void FlowWriter::make_room(double height) {
  if (y_ + height > flow_.height - margin - foot_room && y_ > margin) new_page();
}

std::vector<std::string> FlowWriter::wrap(Face face, double size, double width,
                                          std::string_view words) const {
  const double ems = width / size;
  std::vector<std::string> lines;
  std::string line;
  while (!words.empty()) {
    const auto blank = std::min(words.find(' '), words.size());
    std::string_view word = words.substr(0, blank);
    words.remove_prefix(std::min(blank + 1, words.size()));
    const std::string longer = line.empty() ? std::string(word) : line + ' ' + std::string(word);
    if (ruler_.width(face, longer) <= ems) {
      line = longer;
      continue;
    }
    if (!line.empty()) lines.push_back(std::exchange(line, {}));
    while (ruler_.width(face, word) > ems) {
      const std::size_t part = fitting(word, ems, face, ruler_);
      lines.emplace_back(word.substr(0, part));
      word.remove_prefix(part);
    }
    line = word;
  }
  if (!line.empty()) lines.push_back(std::move(line));
  return lines;
}

void FlowWriter::text(const FlowStyle& style, std::string_view words) {
  const auto lines = wrap(style.face, style.size, text_width() - style.indent, words);
  make_room(style.above +
            line_height(style.size) * std::min<double>(2, static_cast<double>(lines.size())) +
            style.keep);
  if (y_ > margin) y_ += style.above;
  for (const std::string& line : lines) {
    make_room(line_height(style.size));
    flow_.pages.back().texts.push_back(
        {style.face, style.size, margin + style.indent, y_ + baseline_ems * style.size, line});
    y_ += line_height(style.size);
  }
}

void FlowWriter::heading(std::string_view words) {
  text(flow_heading, words);
  rule();
}

void FlowWriter::rule() {
  flow_.pages.back().rules.push_back({margin, y_ + 0.4, text_width(), 0.35});
  y_ += 1.6;
}

void FlowWriter::space(double millimetres) { y_ += millimetres; }

void FlowWriter::task(std::string_view tub, std::string_view words,
                      const std::vector<std::string>& more) {
  const double width = text_width() - tick_room;
  FlowStyle strong = flow_strong;
  double height = strong.above;
  height += line_height(strong.size) *
            static_cast<double>(wrap(strong.face, strong.size, width, tub).size());
  height += line_height(flow_line.size) *
            static_cast<double>(wrap(flow_line.face, flow_line.size, width, words).size());
  for (const std::string& line : more)
    height += flow_small.above +
              line_height(flow_small.size) *
                  static_cast<double>(wrap(flow_small.face, flow_small.size, width, line).size());
  make_room(height + flow_line.above);
  flow_.pages.back().boxes.push_back({margin, y_ + strong.above + 0.3, tick});
  strong.indent = tick_room;
  strong.keep = 0;
  text(strong, tub);
  FlowStyle line = flow_line;
  line.indent = tick_room;
  line.above = 0;
  text(line, words);
  FlowStyle small = flow_small;
  small.indent = tick_room;
  for (const std::string& one : more) text(small, one);
}

Flow FlowWriter::finish(std::string foot) {
  flow_.foot = std::move(foot);
  constexpr double size = 3.4;
  for (std::size_t page = 0; page < flow_.pages.size(); ++page) {
    const std::string words =
        fmt::format("{}, page {} of {}", flow_.foot, page + 1, flow_.pages.size());
    flow_.pages[page].texts.push_back({Face::Text, size, margin, flow_.height - margin, words});
  }
  return flow_;
}

Pages pages_of(const Flow& flow, const PangoText& text) {
  return {flow.width, flow.height, static_cast<int>(flow.pages.size()),
          [&flow, &text](cairo_t* canvas, int page) { paint_page(canvas, flow, page, text); }};
}

}  // namespace rackside

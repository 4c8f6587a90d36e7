#include "kiosk/scene/composer.hpp"

#include <algorithm>
#include <cmath>

namespace rackside::kiosk {
namespace {

constexpr std::string_view ellipsis = "…";
constexpr double stroke_mm = 0.45;
constexpr double accent_edge_mm = 0.9;
constexpr double least_tile_words_mm = 2.25;  // read by the hand that taps

// Bytes of the UTF-8 character that ends at the end of `text`.
std::size_t last_character(std::string_view text) {
  std::size_t size = 1;
  while (size < text.size() && (text[text.size() - size] & 0xC0) == 0x80) ++size;
  return size;
}

std::vector<std::string_view> words_of(std::string_view text) {
  std::vector<std::string_view> words;
  while (!text.empty()) {
    const auto end = std::min(text.find(' '), text.size());
    if (end > 0) words.push_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return words;
}

}  // namespace

Composer::Composer(const Panel& panel, const TextMetrics& metrics)
    : panel_(panel), metrics_(metrics) {}

Box Composer::whole() const {
  return {0, 0, static_cast<double>(panel_.width), static_cast<double>(panel_.height)};
}

Style Composer::style(Step step, Face face) const { return style_of(step, face, panel_, metrics_); }

void Composer::fill(const Box& box, Ink ink) { scene_.items.emplace_back(Fill{box, ink}); }

void Composer::rule(const Box& box, Ink ink) {
  fill({box.x, box.y, box.width, std::max(1.0, std::round(mm(0.25)))}, ink);
}

void Composer::path(Path path) { scene_.items.emplace_back(std::move(path)); }

void Composer::mark(Mark mark, const Box& box, Ink ink) {
  if (mark == Mark::None) return;
  // One weight for all marks; small ones get a thinner line, or they would fill up.
  const double width = std::min(mm(stroke_mm), box.width * 0.1);
  scene_.items.emplace_back(MarkAt{mark, box, std::max(1.2, width), ink});
}

void Composer::landing_mark(Mark mark, const Box& box, const EventId& event) {
  if (mark == Mark::None) return;
  this->mark(mark, box);
  scene_.landing = LandingMark{event, std::get<MarkAt>(scene_.items.back())};
}

void Composer::live(const Box& box, std::uint64_t picture) {
  scene_.items.emplace_back(LivePicture{box, picture});
}

double Composer::text(const Box& box, std::string_view words, Style style, Ink ink, Align align,
                      Ink ground) {
  const std::string shown = shortened(words, style, box.width);
  if (shown.empty()) return 0;
  const double width = metrics_.width(shown, style);
  const double height = metrics_.line_height(style);
  double x = box.x;
  if (align == Align::Middle) x += (box.width - width) / 2;
  if (align == Align::Right) x += box.width - width;
  const Box landed{std::floor(x), std::floor(box.y + (box.height - height) / 2), width, height};
  scene_.items.emplace_back(Text{landed, box, shown, style, ink, ground});
  return width;
}

void Composer::paragraph(Box& box, std::string_view words, Style style, std::size_t most, Ink ink) {
  auto lines = broken(words, style, box.width);
  const double height = line_height(style);
  const auto room = static_cast<std::size_t>(std::max(0.0, std::floor(box.height / height)));
  most = std::min(most, room);
  if (lines.size() > most && most > 0) {
    // What is left over goes into the last line, which is then shortened with its mark.
    for (std::size_t i = most; i < lines.size(); ++i) lines[most - 1] += ' ' + lines[i];
  }
  lines.resize(std::min(lines.size(), most));
  for (const std::string& line : lines) text(box.take_top(height), line, style, ink);
}

Style Composer::fitting(std::string_view words, Face face, double largest, double least,
                        std::size_t most, const Box& box) const {
  constexpr double step = 0.4;
  const auto holds = [&](Style style) {
    const std::size_t lines = broken(words, style, box.width).size();
    return lines <= most && static_cast<double>(lines) * line_height(style) <= box.height;
  };
  double capital = largest;
  Style chosen = style_with_capital(capital, face, panel_, metrics_);
  while (capital > least && !holds(chosen)) {
    capital = std::max(least, capital - step);
    chosen = style_with_capital(capital, face, panel_, metrics_);
  }
  return chosen;
}

void Composer::fitted(Box& box, std::string_view words, Face face, double largest, double least,
                      std::size_t most, Ink ink) {
  paragraph(box, words, fitting(words, face, largest, least, most, box), most, ink);
}

std::vector<std::string> Composer::broken(std::string_view words, Style style, double width) const {
  std::vector<std::string> lines;
  std::string line;
  for (const std::string_view word : words_of(words)) {
    const std::string longer = line.empty() ? std::string(word) : line + ' ' + std::string(word);
    if (line.empty() || metrics_.width(longer, style) <= width) {
      line = longer;
    } else {
      lines.push_back(std::move(line));
      line = word;
    }
  }
  if (!line.empty()) lines.push_back(std::move(line));
  return lines;
}

std::string Composer::shortened(std::string_view words, Style style, double width) const {
  std::string shown(words);
  if (metrics_.width(shown, style) <= width) return shown;
  while (!shown.empty()) {
    shown.resize(shown.size() - last_character(shown));
    const std::string with_mark = shown + std::string(ellipsis);
    if (metrics_.width(with_mark, style) <= width) return with_mark;
  }
  return {};
}

void Composer::slip(const Box& box, Weight weight) {
  const bool first = weight == Weight::First;
  fill(box, first ? Ink::Accent : Ink::Slip);
  if (!first) {
    Box edge = box;
    fill(edge.take_bottom(mm(accent_edge_mm)), Ink::Accent);
  }
}

void Composer::tile(const Box& box, Mark mark_shape, std::string_view word, Intent intent,
                    Weight weight, const std::vector<std::string>& below) {
  slip(box, weight);
  const Ink ink = weight == Weight::First ? Ink::OnAccent : Ink::Text;
  const Ink ground = weight == Weight::First ? Ink::Accent : Ink::Slip;
  Box inside = box.inset(mm(1.2));
  Style words = style(Step::Record, Face::Bold);
  const auto lines = broken(word, words, inside.width);
  const double text_height =
      line_height(words) * static_cast<double>(std::min<std::size_t>(lines.size(), 2));
  const Style small = style_with_capital(least_tile_words_mm, Face::Regular, panel_, metrics_);
  Box details = inside.take_bottom(line_height(small) * static_cast<double>(below.size()));
  for (const std::string& line : below)
    text(details.take_top(line_height(small)), line, small, ink, Align::Left, ground);
  Box word_box = inside.take_bottom(text_height);
  const double side = std::min({inside.height - mm(0.6), inside.width, mm(9)});
  mark(mark_shape, {inside.x, inside.y, side, side}, ink);
  for (std::size_t i = 0; i < lines.size() && i < 2; ++i)
    text(word_box.take_top(line_height(words)), lines[i], words, ink, Align::Left, ground);
  touch(box, word, std::move(intent));
}

void Composer::key(const Box& box, std::string_view word, Intent intent, Weight weight) {
  slip(box, weight);
  const bool first = weight == Weight::First;
  text(box.inset(mm(1)), word, style(Step::Instruction, Face::Bold),
       first ? Ink::OnAccent : Ink::Text, Align::Middle, first ? Ink::Accent : Ink::Slip);
  touch(box, word, std::move(intent));
}

void Composer::titled_key(const Box& box, std::string_view word, std::string_view detail,
                          Intent intent) {
  slip(box, Weight::Plain);
  Box inside = box.inset(mm(2));
  text(inside.take_top(inside.height * 0.55), word, style(Step::Species, Face::Bold), Ink::Text,
       Align::Left, Ink::Slip);
  text(inside, detail, style(Step::Record), Ink::Text, Align::Left, Ink::Slip);
  touch(box, word, std::move(intent));
}

void Composer::touch(const Box& box, std::string_view word, Intent intent) {
  scene_.targets.push_back({box, std::string(word), std::move(intent)});
}

}  // namespace rackside::kiosk

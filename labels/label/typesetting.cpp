#include "labels/label/typesetting.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "labels/label/shortened.hpp"

namespace rackside {
namespace {

constexpr std::string_view between_facts = " \xC2\xB7 ";
// Fewer letters than this, and a name says nothing any more.
constexpr std::size_t least_letters_kept = 6;
// Of the room's height, for the code: all labels of one size show it alike, whatever else they say.
constexpr double code_share = 0.24;
constexpr double rounding = 1e-9;

bool is_fact(Part part) {
  return part == Part::Source || part == Part::Date || part == Part::Instar ||
         part == Part::CommonName;
}

void leave_out(Part part, SetText& text) {
  if (part == Part::Species) text.species_whole = false;
  text.left_out.emplace_back(name_of(part));
}

}  // namespace

double SetText::height() const {
  double sum = 0;
  for (const SetLine& line : lines) sum += line.size * line_ems;
  return sum;
}

Typesetter::Typesetter(double width, double height, const TextRuler& ruler)
    : width_(width), height_(height), growth_(std::clamp(height / 17.0, 1.0, 1.9)), ruler_(ruler) {}

SetText Typesetter::set(const std::vector<Wording>& words, TypeChoice choice) const {
  SetText text;
  const double facts = fact_size(words, choice);
  for (const Wording& word : words) {
    if (word.part == Part::Code) set_code(word, choice, text);
    if (word.part == Part::Warning) set_warning(word, choice, text);
    if (word.part == Part::Species) set_species(word, choice, text);
    if (is_fact(word.part)) add_fact(word, facts, text);
  }
  return text;
}

// In its two groups below each other where the room is too narrow for one line.
void Typesetter::set_code(const Wording& word, TypeChoice choice, SetText& text) const {
  if (const auto size = code_size(ruler_.width(Face::Code, word.full), choice)) {
    text.lines.push_back({Part::Code, word.full, *size});
    return;
  }
  const auto blank = word.full.find(' ');
  const std::string first = word.full.substr(0, blank);
  const auto size = code_size(ruler_.width(Face::Code, first), choice);
  if (!size) {
    leave_out(Part::Code, text);
    return;
  }
  text.lines.push_back({Part::Code, first, *size});
  text.lines.push_back({Part::Code, word.full.substr(blank + 1), *size});
}

void Typesetter::set_warning(const Wording& word, TypeChoice choice, SetText& text) const {
  for (const double scale : {choice.scale, 0.0})
    for (const std::string& words : {word.full, word.shorter}) {
      const double size = size_at(Part::Warning, scale);
      if ((ruler_.width(Face::TextBold, words) + warning_ems) * size > width_ + rounding) continue;
      text.lines.push_back({Part::Warning, words, size});
      return;
    }
  leave_out(Part::Warning, text);
}

// Letters may shrink by a quarter before words are taken away.
void Typesetter::set_species(const Wording& word, TypeChoice choice, SetText& text) const {
  const double size = size_at(Part::Species, choice.scale);
  const double smaller = size_at(Part::Species, choice.scale * 0.75);
  const auto set_if_it_fits = [&](const std::string& words, double at) {
    if (!fits(Part::Species, words, at)) return false;
    text.lines.push_back({Part::Species, words, at});
    return true;
  };
  if (set_if_it_fits(word.full, size) || set_if_it_fits(word.full, smaller)) return;
  if (choice.species_on_two_lines &&
      (set_on_two_lines(word, size, text) || set_on_two_lines(word, smaller, text)))
    return;
  text.species_whole = false;
  for (const double at : {size, smaller, size_at(Part::Species, 0)})
    if (set_if_it_fits(word.shorter, at)) return;
  cut_or_leave_out(Part::Species, word.shorter, text);
}

bool Typesetter::set_on_two_lines(const Wording& word, double size, SetText& text) const {
  const auto blank = word.full.find(' ');
  if (blank == std::string::npos) return false;
  const std::string first = word.full.substr(0, blank);
  const std::string second = word.full.substr(blank + 1);
  if (!fits(Part::Species, first, size) || !fits(Part::Species, second, size)) return false;
  text.lines.push_back({Part::Species, first, size});
  text.lines.push_back({Part::Species, second, size});
  return true;
}

// All facts in letters of one size, so small that the longest fits where that can be.
double Typesetter::fact_size(const std::vector<Wording>& words, TypeChoice choice) const {
  double size = size_at(Part::Source, choice.scale);
  for (const Wording& word : words)
    if (is_fact(word.part)) size = std::min(size, width_ / ruler_.width(Face::Text, word.full));
  return std::max(size, size_at(Part::Source, 0));
}

// Facts share a line where two fit, with a dot between them.
void Typesetter::add_fact(const Wording& word, double size, SetText& text) const {
  if (!text.lines.empty() && is_fact(text.lines.back().part)) {
    SetLine& line = text.lines.back();
    const std::string joined = fmt::format("{}{}{}", line.text, between_facts, word.full);
    if (fits(line.part, joined, line.size)) {
      line.text = joined;
      return;
    }
  }
  if (fits(word.part, word.full, size))
    text.lines.push_back({word.part, word.full, size});
  else
    cut_or_leave_out(word.part, word.full, text);
}

void Typesetter::cut_or_leave_out(Part part, const std::string& words, SetText& text) const {
  const double size = size_at(part, 0);
  if (fits(part, words, size)) {
    text.lines.push_back({part, words, size});
    return;
  }
  std::size_t fitting = 0;
  for (std::size_t low = 1, high = may_be_cut(part) ? letter_count(words) : 0; low <= high;) {
    const std::size_t middle = (low + high) / 2;
    const bool fit = fits(part, cut_after(words, middle), size);
    fitting = fit ? middle : fitting;
    (fit ? low : high) = fit ? middle + 1 : middle - 1;
  }
  if (fitting < least_letters_kept) {
    leave_out(part, text);
    return;
  }
  text.lines.push_back({part, cut_after(words, fitting), size});
  text.left_out.push_back(fmt::format("end of the {}", name_of(part)));
}

double Typesetter::size_at(Part part, double scale) const {
  const LetterSizes sizes = letter_sizes(part);
  return sizes.least + scale * (sizes.preferred * growth_ - sizes.least);
}

bool Typesetter::fits(Part part, std::string_view words, double size) const {
  return ruler_.width(face_of(part), words) * size <= width_ + rounding;
}

std::optional<double> Typesetter::code_size(double ems, TypeChoice choice) const {
  const LetterSizes sizes = letter_sizes(Part::Code);
  const double most = std::min(
      {width_ / ems, sizes.preferred * growth_, std::max(code_share * height_, sizes.least)});
  if (most < sizes.least - rounding) return std::nullopt;
  return choice.small_code ? sizes.least : most;
}

}  // namespace rackside

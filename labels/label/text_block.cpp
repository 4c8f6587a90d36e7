#include "labels/label/text_block.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "labels/label/hazard.hpp"
#include "labels/label/shortened.hpp"

namespace rackside {
namespace {

enum class Part { Code, Warning, Species, Source, Date, Instar, CommonName };

constexpr std::array parts_by_need{Part::Code, Part::Warning, Part::Species,   Part::Source,
                                   Part::Date, Part::Instar,  Part::CommonName};

// Letters in millimetres an em on a label with a room 17 mm high or less; larger rooms, larger
// letters. Below the least size print is hard to read from an arm's length.
struct Sizes {
  double preferred;
  double least;
};

Sizes sizes_of(Part part) {
  switch (part) {
    case Part::Code: return {3.7, 1.9};
    case Part::Warning: return {2.5, 1.8};
    case Part::Species: return {2.9, 1.8};
    case Part::Source:
    case Part::Date:
    case Part::Instar:
    case Part::CommonName: return {2.3, 1.7};
  }
  return {2.3, 1.7};
}

std::string_view name_of(Part part) {
  switch (part) {
    case Part::Code: return "code in letters";
    case Part::Warning: return "warning";
    case Part::Species: return "species";
    case Part::Source: return "source";
    case Part::Date: return "date";
    case Part::Instar: return "instar";
    case Part::CommonName: return "common name";
  }
  return "";
}

Face face_of(Part part) {
  if (part == Part::Code) return Face::Code;
  return part == Part::Species || part == Part::Warning ? Face::TextBold : Face::Text;
}

std::string text_of(const LabelContent& content, Part part) {
  switch (part) {
    case Part::Code: return content.code.grouped();
    case Part::Warning: return std::string(hazard_words(content.hazard));
    case Part::Species: return one_line(content.species);
    case Part::Source: return one_line(content.source);
    case Part::Date: return content.date ? format_day(*content.date) : std::string{};
    case Part::Instar: return content.instar ? fmt::format("instar {}", *content.instar) : "";
    case Part::CommonName: return one_line(content.common_name);
  }
  return "";
}

struct Line {
  Part part;
  std::string text;
  double size;
};

// One way to set the words: how large between least (0) and preferred (1), and whether a species
// may take two lines.
struct Setting {
  double scale = 1;
  bool species_on_two_lines = false;
};

struct Attempt {
  std::vector<Line> lines;
  std::vector<std::string> left_out;
  bool species_whole = true;
};

constexpr std::size_t least_letters_kept = 6;

class Fitter {
 public:
  Fitter(const LabelContent& content, const TextRoom& room, const TextRuler& ruler)
      : room_(room), ruler_(ruler), growth_(std::clamp(room.height / 17.0, 1.0, 1.9)) {
    for (const Part part : parts_by_need)
      if (std::string text = text_of(content, part); !text.empty())
        parts_.push_back({part, std::move(text)});
  }

  TextBlock fit() {
    std::vector<std::string> dropped;
    for (; !parts_.empty(); parts_.pop_back()) {
      if (const auto attempt = best_attempt()) return placed(*attempt, dropped);
      dropped.insert(dropped.begin(), std::string(name_of(parts_.back().first)));
    }
    return placed({}, dropped);
  }

 private:
  // Whole names in good size first; then abbreviated ones in any size; then whole ones in any.
  std::optional<Attempt> best_attempt() const {
    auto whole = largest_that_fits(true, 0.3);
    if (whole && whole->species_whole) return whole;
    auto shorter = largest_that_fits(false, 0.0);
    return shorter ? shorter : largest_that_fits(true, 0.0);
  }

  std::optional<Attempt> largest_that_fits(bool two_lines, double least_scale) const {
    for (double scale = 1.0; scale >= least_scale - 1e-9; scale -= 0.1) {
      Attempt attempt = set({std::max(scale, 0.0), two_lines});
      if (height_of(attempt) <= room_.height + 1e-6) return attempt;
    }
    return std::nullopt;
  }

  Attempt set(Setting setting) const {
    Attempt attempt;
    std::vector<std::pair<Part, std::string>> facts;
    for (const auto& [part, text] : parts_) {
      switch (part) {
        case Part::Code: set_code(text, setting, attempt); break;
        case Part::Warning: set_warning(text, setting, attempt); break;
        case Part::Species: set_species(text, setting, attempt); break;
        case Part::Source:
        case Part::Date:
        case Part::Instar:
        case Part::CommonName: facts.emplace_back(part, text); break;
      }
    }
    set_facts(facts, setting, attempt);
    return attempt;
  }

  void set_code(const std::string& text, Setting setting, Attempt& attempt) const {
    if (const auto size = size_for(Part::Code, text, setting)) {
      attempt.lines.push_back({Part::Code, text, *size});
      return;
    }
    const auto blank = text.find(' ');
    const std::string first = text.substr(0, blank);
    const auto size = size_for(Part::Code, first, setting);
    if (!size) {
      leave_out(Part::Code, attempt);
      return;
    }
    attempt.lines.push_back({Part::Code, first, *size});
    attempt.lines.push_back({Part::Code, text.substr(blank + 1), *size});
  }

  // The sign itself stands before the words and is as high as the line.
  void set_warning(const std::string& text, Setting setting, Attempt& attempt) const {
    for (const std::string& words : {text, short_warning(text)})
      if (const auto size = size_for(Part::Warning, words, setting, warning_ems)) {
        attempt.lines.push_back({Part::Warning, words, *size});
        return;
      }
    leave_out(Part::Warning, attempt);
  }

  static std::string short_warning(const std::string& words) {
    for (const Hazard hazard : {Hazard::Venom, Hazard::Hairs, Hazard::VenomAndHairs})
      if (hazard_words(hazard) == words) return std::string(hazard_short_words(hazard));
    return words;
  }

  void set_species(const std::string& text, Setting setting, Attempt& attempt) const {
    // Letters may shrink by a quarter before words are taken away.
    const Setting smaller{setting.scale * 0.75, setting.species_on_two_lines};
    for (const Setting& tried : {setting, smaller})
      if (const auto size = size_for(Part::Species, text, tried)) {
        attempt.lines.push_back({Part::Species, text, *size});
        return;
      }
    if (setting.species_on_two_lines && set_on_two_lines(text, setting, attempt)) return;
    attempt.species_whole = false;
    const std::string shorter = abbreviated_species(text);
    for (const Setting& tried : {setting, smaller, Setting{0, false}})
      if (const auto size = size_for(Part::Species, shorter, tried)) {
        attempt.lines.push_back({Part::Species, shorter, *size});
        return;
      }
    set_cut(Part::Species, shorter, attempt);
  }

  bool set_on_two_lines(const std::string& text, Setting setting, Attempt& attempt) const {
    const auto blank = text.find(' ');
    if (blank == std::string::npos) return false;
    const std::string first = text.substr(0, blank);
    const std::string second = text.substr(blank + 1);
    const auto one = size_for(Part::Species, first, setting);
    const auto other = size_for(Part::Species, second, setting);
    if (!one || !other) return false;
    const double size = std::min(*one, *other);
    attempt.lines.push_back({Part::Species, first, size});
    attempt.lines.push_back({Part::Species, second, size});
    return true;
  }

  // Facts share lines as they come, with a dot between them.
  void set_facts(const std::vector<std::pair<Part, std::string>>& facts, Setting setting,
                 Attempt& attempt) const {
    constexpr std::string_view between = " \xC2\xB7 ";
    std::optional<std::size_t> open;  // the line that may take one more
    for (const auto& [part, text] : facts) {
      if (open) {
        const std::string joined = attempt.lines[*open].text + std::string(between) + text;
        if (ruler_.width(Face::Text, joined) * attempt.lines[*open].size <= room_.width) {
          attempt.lines[*open].text = joined;
          continue;
        }
      }
      if (const auto size = size_for(part, text, setting)) {
        open = attempt.lines.size();
        attempt.lines.push_back({part, text, *size});
      } else {
        open.reset();
        set_cut(part, text, attempt);
      }
    }
  }

  void set_cut(Part part, const std::string& text, Attempt& attempt) const {
    const double size = size_at(part, 0);
    const auto fits = [&](std::size_t letters) {
      return ruler_.width(face_of(part), cut_after(text, letters)) * size <= room_.width;
    };
    std::size_t fitting = 0;
    for (std::size_t low = 1, high = letter_count(text); low <= high;) {
      const std::size_t middle = (low + high) / 2;
      if (fits(middle)) {
        fitting = middle;
        low = middle + 1;
      } else {
        high = middle - 1;
      }
    }
    if (fitting < least_letters_kept) {
      leave_out(part, attempt);
      return;
    }
    attempt.lines.push_back({part, cut_after(text, fitting), size});
    attempt.left_out.push_back(fmt::format("end of the {}", name_of(part)));
  }

  static void leave_out(Part part, Attempt& attempt) {
    if (part == Part::Species) attempt.species_whole = false;
    attempt.left_out.emplace_back(name_of(part));
  }

  double size_at(Part part, double scale) const {
    const Sizes sizes = sizes_of(part);
    return sizes.least + scale * (sizes.preferred * growth_ - sizes.least);
  }

  // The size at `setting`, or the smaller one at which `text` just fits, or none. Only the code and
  // the warning shrink by themselves; the other parts have shorter words to try first.
  std::optional<double> size_for(Part part, const std::string& text, Setting setting,
                                 double ems_before = 0) const {
    const double ems = ruler_.width(face_of(part), text) + ems_before;
    const double size = size_at(part, setting.scale);
    if (ems * size <= room_.width) return size;
    if (part != Part::Code && part != Part::Warning) return std::nullopt;
    const double fitting = room_.width / ems;
    return fitting >= sizes_of(part).least ? std::optional(fitting) : std::nullopt;
  }

  static double height_of(const Attempt& attempt) {
    double height = 0;
    for (const Line& line : attempt.lines) height += line.size * line_ems;
    return height;
  }

  TextBlock placed(const Attempt& attempt, const std::vector<std::string>& dropped) const;

  static constexpr double warning_ems = 1.25;

  TextRoom room_;
  const TextRuler& ruler_;
  double growth_;
  std::vector<std::pair<Part, std::string>> parts_;
};

TextBlock Fitter::placed(const Attempt& attempt, const std::vector<std::string>& dropped) const {
  TextBlock block;
  double top = room_.y + (room_.height - height_of(attempt)) / 2;
  for (const Line& line : attempt.lines) {
    double x = room_.x;
    if (line.part == Part::Warning) {
      block.warning = PlacedWarning{line.size, x, top + (line_ems - 1) / 2 * line.size};
      x += warning_ems * line.size;
    }
    if (line.part == Part::Code) block.code_size = line.size;
    block.texts.push_back(
        {face_of(line.part), line.size, x, top + baseline_ems * line.size, line.text});
    top += line.size * line_ems;
  }
  block.left_out = attempt.left_out;
  block.left_out.insert(block.left_out.end(), dropped.begin(), dropped.end());
  for (const std::string& name : block.left_out) {
    const auto part = std::ranges::find(parts_by_need, name, name_of);
    block.loss += part == parts_by_need.end()
                      ? 1
                      : 1 << (parts_by_need.end() - part);  // a cut end weighs least
  }
  return block;
}

}  // namespace

TextBlock fit_text(const LabelContent& content, const TextRoom& room, const TextRuler& ruler) {
  return Fitter(content, room, ruler).fit();
}

}  // namespace rackside

#pragma once
// The words of a label as lines, for one choice of letter size. Which choice is best is
// text_block's business.

#include <optional>
#include <string>
#include <vector>

#include "labels/label/label_parts.hpp"

namespace rackside {

struct SetLine {
  Part part;
  std::string text;
  double size;  // millimetres an em
};

struct TypeChoice {
  double scale = 1;                   // from the least letters (0) to the preferred ones (1)
  bool species_on_two_lines = false;  // else it is abbreviated where it does not fit on one
  bool small_code = false;            // the code too gives up room
};

struct SetText {
  std::vector<SetLine> lines;
  std::vector<std::string> left_out;
  bool species_whole = true;

  [[nodiscard]] double height() const;
};

/// The sign stands before the words of its line and takes so many ems with the gap behind it.
inline constexpr double warning_ems = 1.25;

class Typesetter {
 public:
  /// The room in millimetres.
  Typesetter(double width, double height, const TextRuler& ruler);

  [[nodiscard]] SetText set(const std::vector<Wording>& words, TypeChoice choice) const;

 private:
  void set_code(const Wording& word, TypeChoice choice, SetText& text) const;
  void set_warning(const Wording& word, TypeChoice choice, SetText& text) const;
  void set_species(const Wording& word, TypeChoice choice, SetText& text) const;
  [[nodiscard]] bool set_on_two_lines(const Wording& word, double size, SetText& text) const;
  [[nodiscard]] double fact_size(const std::vector<Wording>& words, TypeChoice choice) const;
  void add_fact(const Wording& word, double size, SetText& text) const;
  void cut_or_leave_out(Part part, const std::string& words, SetText& text) const;

  [[nodiscard]] double size_at(Part part, double scale) const;
  [[nodiscard]] bool fits(Part part, std::string_view words, double size) const;
  /// The letters the code takes when `ems` of it must fit, or none below the least.
  [[nodiscard]] std::optional<double> code_size(double ems, TypeChoice choice) const;

  double width_;
  double height_;
  double growth_;
  const TextRuler& ruler_;
};

}  // namespace rackside

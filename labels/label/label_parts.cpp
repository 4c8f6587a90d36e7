#include "labels/label/label_parts.hpp"

#include <fmt/format.h>

#include "labels/label/hazard.hpp"
#include "labels/label/shortened.hpp"

namespace rackside {
namespace {

std::string full_text(const LabelContent& content, Part part) {
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

std::string shorter_text(const LabelContent& content, Part part, const std::string& full) {
  if (part == Part::Species) return abbreviated_species(full);
  if (part == Part::Warning) return std::string(hazard_short_words(content.hazard));
  return full;
}

}  // namespace

LetterSizes letter_sizes(Part part) {
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

std::vector<Wording> wordings(const LabelContent& content) {
  std::vector<Wording> list;
  for (const Part part : parts_by_need) {
    std::string full = full_text(content, part);
    if (full.empty()) continue;
    std::string shorter = shorter_text(content, part, full);
    list.push_back({part, std::move(full), std::move(shorter)});
  }
  return list;
}

bool may_be_cut(Part part) {
  return part == Part::Species || part == Part::Source || part == Part::CommonName;
}

}  // namespace rackside

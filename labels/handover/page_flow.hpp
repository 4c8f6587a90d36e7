#pragma once
// Text and codes running down pages: what does not fit goes to the next one, headings stay with
// what they head. The result is a value; paint_flow draws it.

#include <string>
#include <string_view>
#include <vector>

#include "labels/label/symbol_size.hpp"
#include "labels/label/text_ruler.hpp"
#include "labels/render/pages.hpp"
#include "labels/render/pango_text.hpp"

namespace rackside {

/// Where a thing stands on its page; millimetres from the top left corner.
struct FlowText {
  Face face = Face::Text;
  double size = 0;  // one em
  double x = 0;     // left end of the baseline
  double y = 0;
  std::string text;
};
struct FlowRule {
  double x = 0;
  double y = 0;
  double width = 0;
  double thick = 0;
};
/// An empty square to tick.
struct FlowBox {
  double x = 0;
  double y = 0;
  double side = 0;
};
struct FlowSymbol {
  Code code;
  SymbolSize size;
  double x = 0;  // of the symbol's own corner, on a printer dot
  double y = 0;
};

struct FlowPage {
  std::vector<FlowText> texts;
  std::vector<FlowRule> rules;
  std::vector<FlowBox> boxes;
  std::vector<FlowSymbol> symbols;
};

struct Flow {
  double width = 0;
  double height = 0;
  std::string foot;  // at the foot of every page, with its number
  std::vector<FlowPage> pages;
};

/// Letters that are read at arm's length; the least of them is 3.4 mm an em.
struct FlowStyle {
  Face face = Face::Text;
  double size = 4.0;
  double indent = 0;  // from the left edge of the text
  double above = 0;   // white before it
  double keep = 0;    // so much room below must be left on the page, else it begins the next one
};
inline constexpr FlowStyle flow_title{Face::TextBold, 9.0, 0, 0, 40};
inline constexpr FlowStyle flow_heading{Face::TextBold, 6.0, 0, 5, 26};
inline constexpr FlowStyle flow_rack{Face::TextBold, 4.6, 0, 3, 18};
inline constexpr FlowStyle flow_line{Face::Text, 4.0, 0, 0.8, 0};
inline constexpr FlowStyle flow_strong{Face::TextBold, 4.0, 0, 1.6, 10};
inline constexpr FlowStyle flow_small{Face::Text, 3.4, 0, 0.4, 0};

class FlowWriter {
 public:
  FlowWriter(double width, double height, Resolution resolution, const TextRuler& ruler);

  /// Wrapped at blanks; a word that is too long for a line is broken.
  void text(const FlowStyle& style, std::string_view words);
  /// A heading on a page of its own.
  void new_page();
  /// The heading with a line under it.
  void heading(std::string_view words);
  /// A box to tick at the left, and the words beside it.
  void task(std::string_view tub, std::string_view words, const std::vector<std::string>& more);
  void rule();
  void space(double millimetres);

  /// Symbols side by side, each with the lines below it.
  struct Cell {
    Code code;
    std::vector<std::string> lines;
  };
  void codes(const std::vector<Cell>& cells, int columns, double room);

  [[nodiscard]] Flow finish(std::string foot);

 private:
  [[nodiscard]] std::vector<std::string> wrap(Face face, double size, double width,
                                              std::string_view words) const;
  void make_room(double height);
  [[nodiscard]] double text_width() const;
  void cell(const Cell& cell, const SymbolSize& size, double x, double width);

  Flow flow_;
  Resolution resolution_;
  const TextRuler& ruler_;
  double y_ = 0;
};

/// For labels/render/pages.hpp. Both must outlive what comes back.
[[nodiscard]] Pages pages_of(const Flow& flow, const PangoText& text);

}  // namespace rackside

#pragma once
// Puts texts, rules, marks and tiles into a scene, measured, so that nothing leaves its place:
// what is too long is broken into lines or shortened with a mark.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "kiosk/scene/panel.hpp"
#include "kiosk/scene/scene.hpp"

namespace rackside::kiosk {

enum class Align { Left, Middle, Right };

/// How a tile stands out.
enum class Weight { Plain, First };

class Composer {
 public:
  Composer(const Panel& panel, const TextMetrics& metrics);

  [[nodiscard]] const Panel& panel() const { return panel_; }
  [[nodiscard]] const TextMetrics& metrics() const { return metrics_; }
  [[nodiscard]] double mm(double millimetres) const { return panel_.mm(millimetres); }
  [[nodiscard]] Box whole() const;
  [[nodiscard]] Style style(Step step, Face face = Face::Regular) const;
  [[nodiscard]] double line_height(Style style) const { return metrics_.line_height(style); }
  [[nodiscard]] double width(std::string_view text, Style style) const {
    return metrics_.width(text, style);
  }

  void fill(const Box& box, Ink ink);
  /// A hairline from the left to the right of `box`, along its top.
  void rule(const Box& box, Ink ink = Ink::Line);
  void path(Path path);
  void mark(Mark mark, const Box& box, Ink ink = Ink::Text);
  /// As mark, of a record that was made just now.
  void landing_mark(Mark mark, const Box& box, const EventId& event);
  void live(const Box& box, std::uint64_t picture);

  /// One line, in the middle of the height of `box`; shortened with "…" when too long. Returns its
  /// width.
  double text(const Box& box, std::string_view words, Style style, Ink ink = Ink::Text,
              Align align = Align::Left, Ink ground = Ink::Paper);
  /// Broken into at most `most` lines from the top of `box`; takes what it uses off `box`.
  void paragraph(Box& box, std::string_view words, Style style, std::size_t most,
                 Ink ink = Ink::Text);
  /// The largest style from `largest` down to `least` (heights of a capital, mm) in which the words
  /// need no more than `most` lines and no more room than `box`; `least` where none does.
  [[nodiscard]] Style fitting(std::string_view words, Face face, double largest, double least,
                              std::size_t most, const Box& box) const;
  /// As paragraph, in the style that `fitting` finds.
  void fitted(Box& box, std::string_view words, Face face, double largest, double least,
              std::size_t most, Ink ink = Ink::Text);
  [[nodiscard]] std::vector<std::string> broken(std::string_view words, Style style,
                                                double width) const;

  /// A place to touch, with its mark and word.
  /// `below` are small lines under the word.
  void tile(const Box& box, Mark mark, std::string_view word, Intent intent,
            Weight weight = Weight::Plain, const std::vector<std::string>& below = {});
  /// A place to touch with a word and what there is to say about it, a line each.
  void titled_key(const Box& box, std::string_view word, std::string_view detail, Intent intent);
  /// A place to touch with words only, one line.
  void key(const Box& box, std::string_view word, Intent intent, Weight weight = Weight::Plain);
  /// A place to touch that draws nothing of its own.
  void touch(const Box& box, std::string_view word, Intent intent);

  [[nodiscard]] Scene take() && { return std::move(scene_); }

 private:
  [[nodiscard]] std::string shortened(std::string_view words, Style style, double width) const;
  void slip(const Box& box, Weight weight);

  Panel panel_;
  const TextMetrics& metrics_;
  Scene scene_;
};

}  // namespace rackside::kiosk

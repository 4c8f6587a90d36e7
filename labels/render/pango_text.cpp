#include "labels/render/pango_text.hpp"

#include <pango/pangocairo.h>

#include <algorithm>
#include <array>
#include <unordered_map>

namespace rackside {
namespace {

// Layouts are made at this size and scaled, so that one serves for all sizes.
constexpr double reference_size = 64;
constexpr std::size_t most_layouts = 4096;

struct Unref {
  void operator()(void* object) const { g_object_unref(object); }
};
template <class T>
using Owned = std::unique_ptr<T, Unref>;

struct FreeDescription {
  void operator()(PangoFontDescription* description) const {
    pango_font_description_free(description);
  }
};
using Description = std::unique_ptr<PangoFontDescription, FreeDescription>;

// B612 was drawn to be read at a glance; DejaVu Sans Mono keeps 0, O, 1, I and l apart.
Description description_of(Face face) {
  Description description(
      pango_font_description_from_string(face == Face::Code ? "DejaVu Sans Mono" : "B612"));
  if (face == Face::TextBold)
    pango_font_description_set_weight(description.get(), PANGO_WEIGHT_BOLD);
  pango_font_description_set_absolute_size(description.get(), reference_size * PANGO_SCALE);
  return description;
}

// Hinting moves outlines to the pixels of a screen; widths have to hold at every size instead.
Owned<PangoContext> make_context(PangoFontMap* fonts) {
  Owned<PangoContext> context(pango_font_map_create_context(fonts));
  cairo_font_options_t* options = cairo_font_options_create();
  cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
  cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
  pango_cairo_context_set_font_options(context.get(), options);
  cairo_font_options_destroy(options);
  pango_context_set_round_glyph_positions(context.get(), FALSE);
  return context;
}

bool is_plain(std::string_view text) {
  return std::ranges::all_of(text, [](char c) { return c >= ' ' && c <= '~'; });
}

}  // namespace

struct PangoText::Kept {
  Owned<PangoFontMap> fonts{pango_cairo_font_map_new()};
  Owned<PangoContext> context = make_context(fonts.get());
  std::array<Description, 3> descriptions{description_of(Face::Code), description_of(Face::Text),
                                          description_of(Face::TextBold)};
  std::unordered_map<std::string, Owned<PangoLayout>> layouts;
  double code_advance = 0;  // of the monospaced face, in ems

  PangoLayout* layout(Face face, std::string_view text) {
    const auto index = static_cast<std::size_t>(face);
    std::string key(1, static_cast<char>('0' + index));
    key += text;
    if (const auto found = layouts.find(key); found != layouts.end()) return found->second.get();
    if (layouts.size() >= most_layouts) layouts.clear();
    Owned<PangoLayout> made(pango_layout_new(context.get()));
    pango_layout_set_single_paragraph_mode(made.get(), TRUE);
    pango_layout_set_font_description(made.get(), descriptions[index].get());
    pango_layout_set_text(made.get(), text.data(), static_cast<int>(text.size()));
    return layouts.emplace(std::move(key), std::move(made)).first->second.get();
  }

  double measure(Face face, std::string_view text) {
    PangoRectangle logical;
    pango_layout_get_extents(layout(face, text), nullptr, &logical);
    return logical.width / (reference_size * PANGO_SCALE);
  }
};

PangoText::PangoText() : kept_(std::make_unique<Kept>()) {
  kept_->code_advance = kept_->measure(Face::Code, "0000000000") / 10;
}

PangoText::~PangoText() = default;

double PangoText::width(Face face, std::string_view text) const {
  if (face == Face::Code && is_plain(text))
    return kept_->code_advance * static_cast<double>(text.size());
  return kept_->measure(face, text);
}

void PangoText::draw(cairo_t* canvas, Face face, double size, double x, double y,
                     std::string_view text) const {
  PangoLayoutLine* line = pango_layout_get_line_readonly(kept_->layout(face, text), 0);
  if (line == nullptr) return;
  cairo_save(canvas);
  cairo_translate(canvas, x, y);
  cairo_scale(canvas, size / reference_size, size / reference_size);
  cairo_move_to(canvas, 0, 0);
  pango_cairo_show_layout_line(canvas, line);
  cairo_restore(canvas);
}

}  // namespace rackside

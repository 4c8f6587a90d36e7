#include "kiosk/draw/font_book.hpp"

#include <array>

#include "fonts/font_files.hpp"

namespace rackside::kiosk {
namespace {

constexpr std::size_t most_widths = 20'000;  // a list of thousands of names must not grow for ever
constexpr int measured_at = 200;             // pixels; large enough to measure a capital well

}  // namespace

Result<std::unique_ptr<FontBook>> FontBook::open(const std::string& program) {
  auto book = std::unique_ptr<FontBook>(new FontBook);
  constexpr std::array files{
      std::pair{Face::Regular, FontFile::Regular}, std::pair{Face::Bold, FontFile::Bold},
      std::pair{Face::Italic, FontFile::Italic}, std::pair{Face::Code, FontFile::Code}};
  for (const auto& [face, file] : files) {
    auto path = font_path(file, program);
    if (!path) return tl::unexpected(path.error());
    book->paths_[face] = *path;
    if (book->font({face, measured_at}) == nullptr)
      return failure(ErrorKind::Broken, "A typeface could not be read.", *path);
  }
  return book;
}

TTF_Font* FontBook::font(Style style) const {
  auto& slot = fonts_[{style.face, style.pixels}];
  if (!slot) {
    slot.reset(TTF_OpenFont(paths_.at(style.face).c_str(), style.pixels));
    if (slot) TTF_SetFontHinting(slot.get(), TTF_HINTING_LIGHT);
  }
  return slot.get();
}

double FontBook::width(std::string_view text, Style style) const {
  std::string key(text);
  key += static_cast<char>(1 + static_cast<int>(style.face));
  key += std::to_string(style.pixels);
  if (const auto known = widths_.find(key); known != widths_.end()) return known->second;
  if (widths_.size() > most_widths) widths_.clear();
  int width = 0;
  TTF_SizeUTF8(font(style), std::string(text).c_str(), &width, nullptr);
  widths_.emplace(std::move(key), width);
  return width;
}

double FontBook::line_height(Style style) const { return TTF_FontHeight(font(style)); }

double FontBook::capital_height(Face face) const {
  int top = 0;
  TTF_GlyphMetrics32(font({face, measured_at}), U'H', nullptr, nullptr, nullptr, &top, nullptr);
  return static_cast<double>(top) / measured_at;
}

}  // namespace rackside::kiosk

#include "kiosk/screens/parts.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace rackside::kiosk {
namespace {

constexpr double margin_mm = 3;
constexpr double notice_mm = 3.8;        // heights of a capital: as an instruction ...
constexpr double least_notice_mm = 2.8;  // ... and as a record, where it is long

Mark tone_mark(Tone tone) {
  switch (tone) {
    case Tone::Done: return Mark::Taken;
    case Tone::Tell: return Mark::Written;
    case Tone::Problem: return Mark::Sign;
  }
  return Mark::None;
}

}  // namespace

Box page(const Composer& composer) { return composer.whole().inset(composer.mm(margin_mm)); }

void heading(Composer& composer, Box& box, std::string_view title, std::string_view detail) {
  Box line = box.take_top(composer.mm(least_target_mm));
  composer.key(line.take_left(composer.mm(24)), "back", Close{});
  line.take_left(composer.mm(4));
  const Style big = composer.style(Step::Species, Face::Bold);
  const double used = composer.text(line, title, big);
  line.take_left(used + composer.mm(4));
  composer.text(line, detail, composer.style(Step::Record), Ink::Soft, Align::Right);
  box.take_top(composer.mm(gap_mm));
}

void key_row(Composer& composer, Box& box, const std::vector<KeyRow>& keys) {
  Box row = box.take_bottom(composer.mm(least_target_mm));
  box.take_bottom(composer.mm(gap_mm));
  const double gap = composer.mm(gap_mm);
  const auto count = static_cast<double>(keys.size());
  const double width = (row.width - gap * (count - 1)) / count;
  for (const KeyRow& key : keys) {
    composer.key(row.take_left(width), key.word, key.intent, key.weight);
    row.take_left(gap);
  }
}

void notice_line(Composer& composer, Box& box, const std::optional<Notice>& notice) {
  if (!notice) return;
  constexpr std::size_t most_lines = 3;
  const double side = composer.mm(6);
  Box room = box;
  room.width -= side + composer.mm(4);
  const Style words =
      composer.fitting(notice->sentence, Face::Bold, notice_mm, least_notice_mm, most_lines, room);
  const std::size_t lines =
      std::min(most_lines, composer.broken(notice->sentence, words, room.width).size());
  const double height = composer.line_height(words) * static_cast<double>(lines) + composer.mm(3);
  Box line = box.take_bottom(height);
  box.take_bottom(composer.mm(gap_mm));
  composer.rule(line, Ink::Text);
  line.take_top(composer.mm(1.5));
  Box sign = line.take_left(side);
  composer.mark(tone_mark(notice->tone), {sign.x, sign.y, side, side});
  line.take_left(composer.mm(2));
  line.take_right(composer.mm(2));
  composer.paragraph(line, notice->sentence, words, lines);
}

Pages pages_of(std::size_t entries, std::size_t rows, int wanted) {
  Pages pages;
  pages.rows = std::max<std::size_t>(1, rows);
  pages.count = std::max<std::size_t>(1, (entries + pages.rows - 1) / pages.rows);
  pages.page = std::min(static_cast<std::size_t>(std::max(0, wanted)), pages.count - 1);
  pages.first = pages.page * pages.rows;
  return pages;
}

namespace {

double turning_key_room(const Composer& composer, const Box& box) {
  return (box.height - composer.mm(8)) / 2;
}

// Too low for one above the other: side by side.
bool keys_side_by_side(const Composer& composer, const Box& box) {
  return turning_key_room(composer, box) < composer.mm(least_target_mm);
}

}  // namespace

double page_keys_width(const Composer& composer, const Box& box) {
  return composer.mm(usual_target_mm + gap_mm) * (keys_side_by_side(composer, box) ? 2 : 1);
}

void page_keys(Composer& composer, Box& box, const Pages& pages) {
  if (pages.count < 2) return;
  const int here = static_cast<int>(pages.page);
  Box side = box.take_right(composer.mm(usual_target_mm));
  box.take_right(composer.mm(gap_mm));
  if (keys_side_by_side(composer, side)) {
    composer.key(side, "down", Turn{here + 1});
    composer.key(box.take_right(composer.mm(usual_target_mm)), "up", Turn{here - 1});
    box.take_right(composer.mm(gap_mm));
    return;
  }
  const double height = std::min(composer.mm(22), turning_key_room(composer, side));
  composer.key(side.take_top(height), "up", Turn{here - 1});
  composer.key(side.take_bottom(height), "down", Turn{here + 1});
  composer.text(side, fmt::format("{}/{}", pages.page + 1, pages.count),
                composer.style(Step::Record, Face::Code), Ink::Soft, Align::Middle);
}

double heading_height(const Composer& composer) { return composer.mm(least_target_mm + gap_mm); }

void turning_heading(Composer& composer, Box& box, std::string_view title, std::string_view detail,
                     const Pages& pages, const std::vector<KeyRow>& more) {
  Box line = box.take_top(composer.mm(least_target_mm));
  box.take_top(composer.mm(gap_mm));
  composer.key(line.take_left(composer.mm(22)), "back", Close{});
  line.take_left(composer.mm(3));
  const int here = static_cast<int>(pages.page);
  std::vector<KeyRow> keys = more;
  if (pages.count > 1) {
    keys.push_back({"up", Turn{here - 1}});
    keys.push_back({"down", Turn{here + 1}});
  }
  const double width = composer.mm(18);
  Box row = line.take_right(static_cast<double>(keys.size()) * (width + composer.mm(gap_mm)));
  for (const KeyRow& key : keys) {
    row.take_left(composer.mm(gap_mm));
    composer.key(row.take_left(width), key.word, key.intent, key.weight);
  }
  line.take_right(composer.mm(1));
  composer.text(line.take_top(line.height * 0.52), title,
                composer.style(Step::Species, Face::Bold));
  std::string words(detail);
  if (pages.count > 1)
    words += fmt::format("{}{}/{}", words.empty() ? "" : ", ", pages.page + 1, pages.count);
  composer.text(line, words, composer.style(Step::Record), Ink::Soft);
}

void undo_line(Composer& composer, Box& box, const Model& model) {
  const auto notice = telling(model);
  if (!notice) return;
  Box line = box.take_bottom(composer.mm(least_target_mm));
  box.take_bottom(composer.mm(gap_mm));
  composer.rule(line, Ink::Text);
  if (model.undo) {
    composer.key(line.take_right(composer.mm(26)), "undo", Record{Action::Undo});
    line.take_right(composer.mm(gap_mm));
  }
  line.take_top(composer.mm(1));
  composer.fitted(line, notice->sentence, Face::Bold, 3.8, 2.6, 2);
}

double tub_row_height(const Composer& composer) { return composer.mm(least_target_mm); }

void tub_rows(Composer& composer, Box box, const std::vector<TubLine>& lines, const Pages& pages) {
  const Style position = composer.style(Step::Species, Face::Code);
  const Style species = composer.style(Step::Instruction, Face::Italic);
  const Style small = composer.style(Step::Record);
  const std::size_t end = std::min(lines.size(), pages.first + pages.rows);
  for (std::size_t i = pages.first; i < end; ++i) {
    const TubLine& line = lines[i];
    Box row = box.take_top(tub_row_height(composer));
    composer.touch(row, line.code.grouped(), OpenTub{line.code});
    composer.rule(row);
    row.take_top(composer.mm(0.6));
    composer.text(row.take_left(composer.mm(14)), line.position, position, Ink::Accent);
    Box code = row.take_right(composer.mm(38));
    Box upper = row.take_top(row.height * 0.55);
    composer.text(upper, line.species, species);
    const std::string& what = line.task.empty() ? line.state : line.task;
    composer.text(row, what, small, line.leave_alone ? Ink::Soft : Ink::Text);
    composer.text(code.take_top(code.height * 0.55), line.code.grouped(),
                  composer.style(Step::Caption, Face::Code), Ink::Soft, Align::Right);
    composer.text(code, line.shelf, composer.style(Step::Caption), Ink::Soft, Align::Right);
  }
}

std::size_t rows_in(const Box& box, double row) {
  return static_cast<std::size_t>(std::max(1.0, std::floor(box.height / row)));
}

void tub_list(Composer& composer, Box box, const Model& model,
              const std::vector<const EnclosureState*>& tubs) {
  Pages pages = pages_of(tubs.size(), rows_in(box, tub_row_height(composer)), model.list_page);
  page_keys(composer, box, pages);
  // Only what is shown is worked out: one letter finds thousands.
  std::vector<TubLine> lines;
  for (std::size_t i = pages.first; i < std::min(tubs.size(), pages.first + pages.rows); ++i)
    lines.push_back(tub_line(model, *tubs[i]));
  pages.first = 0;
  tub_rows(composer, box, lines, pages);
}

void named_row(Composer& composer, Box box, const NamedRow& row) {
  composer.touch(box, row.name, row.intent);
  composer.rule(box);
  const Style small = composer.style(Step::Record);
  const double detail = std::min(box.width * 0.5, composer.width(row.detail, small) + 1);
  composer.text(box.take_right(detail), row.detail, small, Ink::Soft, Align::Right);
  box.take_right(composer.mm(gap_mm));
  composer.text(box, row.name, composer.style(Step::Species, row.face), row.ink);
}

void record_line(Composer& composer, Box box, const RecordLine& line) {
  const Style words = composer.style(Step::Record);
  const double side = std::min(box.height * 0.8, composer.mm(4.6));
  Box sign = box.take_left(side);
  composer.mark(line.mark, {sign.x, sign.y + (box.height - side) / 2, side, side});
  box.take_left(composer.mm(1.6));
  Box when = box.take_right(composer.width(line.when, words));
  composer.text(when, line.when, words, Ink::Soft, Align::Right);
  box.take_right(composer.mm(1.5));
  const double width =
      composer.text(box, line.words, words, line.taken_back ? Ink::Soft : Ink::Text);
  // Struck through in ink, not hidden: it was said once.
  if (line.taken_back)
    composer.fill({box.x, box.y + box.height / 2, width, std::max(1.0, composer.mm(0.3))},
                  Ink::Text);
}

}  // namespace rackside::kiosk

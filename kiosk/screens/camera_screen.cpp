// Setup's camera page: the live picture with the aim, and keys that change both.

#include <algorithm>

#include "kiosk/screens/live_part.hpp"
#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/camera_page_view.hpp"
#include "labels/reader/aim_box.hpp"

namespace rackside::kiosk {
namespace {

constexpr std::size_t pad_side = 3;
constexpr double least_choice_mm = 24;

// Visible on any picture: a dark line on a wider light one, or the other way round.
void outline(Composer& composer, std::vector<Spot> points, Ink ink, double width) {
  composer.path({points, true, false, width + 2 * composer.mm(0.4), Ink::Paper});
  composer.path({std::move(points), true, false, width, ink});
}

void outlines(Composer& composer, const Box& place, const CameraSight& sight,
              const std::vector<Quadrilateral>& symbols, Ink ink) {
  const double scale = place.width / sight.width;
  for (const Quadrilateral& corners : symbols) {
    std::vector<Spot> points;
    for (const Point& corner : corners)
      points.push_back({std::clamp(place.x + corner.x * scale, place.x, place.right()),
                        std::clamp(place.y + corner.y * scale, place.y, place.bottom())});
    outline(composer, std::move(points), ink, composer.mm(0.6));
  }
}

void aim_frame(Composer& composer, const Box& place, const CameraSight& sight, const Aim& aim) {
  const AimBox box = aim_box(aim, sight.width, sight.height);
  const double scale = place.width / sight.width;
  const Box frame = Box{place.x + box.left * scale, place.y + box.top * scale, box.width * scale,
                        box.height * scale}
                        .inset(composer.mm(0.8));
  outline(composer,
          {{frame.x, frame.y},
           {frame.right(), frame.y},
           {frame.right(), frame.bottom()},
           {frame.x, frame.bottom()}},
          Ink::Accent, composer.mm(0.8));
}

void live_picture(Composer& composer, Box box, const Model& model, const std::string& trouble) {
  const auto& sight = model.camera ? model.camera->sight : std::nullopt;
  if (!trouble.empty() || !sight || sight->picture == 0) {
    composer.rule(box);
    box.take_top(composer.mm(gap_mm));
    return composer.paragraph(box, trouble, composer.style(Step::Instruction), 4);
  }
  const Box place = picture_place(box, sight->width, sight->height);
  composer.live(place, sight->picture);
  aim_frame(composer, place, *sight, model.settings.aim);
  outlines(composer, place, *sight, sight->unread, Ink::Line);
  outlines(composer, place, *sight, sight->read, Ink::Text);
}

// As many as fit; with more of them, the last key turns to the next ones.
void source_keys(Composer& composer, Box row, const std::vector<SetupChoice>& sources, int page) {
  const double gap = composer.mm(gap_mm);
  const auto fit =
      static_cast<std::size_t>((row.width + gap) / (composer.mm(least_choice_mm) + gap));
  const bool all = sources.size() <= std::max<std::size_t>(1, fit);
  const Pages pages =
      pages_of(sources.size(), all ? sources.size() : std::max<std::size_t>(2, fit) - 1, page);
  if (!all) {
    const int next = static_cast<int>((pages.page + 1) % pages.count);
    composer.key(row.take_right(composer.mm(usual_target_mm)), "more", Turn{next});
    row.take_right(gap);
  }
  const auto count = static_cast<double>(pages.rows);
  const double width = (row.width - gap * (count - 1)) / count;
  for (std::size_t i = pages.first; i < std::min(sources.size(), pages.first + pages.rows); ++i) {
    composer.key(row.take_left(width), sources[i].word, sources[i].intent,
                 sources[i].chosen ? Weight::First : Weight::Plain);
    row.take_left(gap);
  }
}

void aim_pad(Composer& composer, Box box, const std::vector<AimKey>& keys) {
  const double gap = composer.mm(gap_mm);
  const double width = (box.width - 2 * gap) / pad_side;
  const double height = (box.height - 2 * gap) / pad_side;
  for (std::size_t i = 0; i < keys.size(); ++i)
    composer.key({box.x + static_cast<double>(i % pad_side) * (width + gap),
                  box.y + static_cast<double>(i / pad_side) * (height + gap), width, height},
                 keys[i].word, keys[i].intent);
}

// Three keys and the gaps between them.
double pad_extent(const Composer& composer, double key_mm) {
  return composer.mm(pad_side * key_mm + (pad_side - 1) * gap_mm);
}

}  // namespace

void compose_camera(Composer& composer, const Model& model) {
  const CameraPageView view = view_camera(model);
  Box box = page(composer);
  heading(composer, box, "Camera", source_word(model.settings.camera));
  notice_line(composer, box, model.notice);
  const double gap = composer.mm(gap_mm);
  if (composer.panel().portrait()) {
    const double high = std::min(pad_extent(composer, usual_target_mm), box.height * 0.4);
    aim_pad(composer, box.take_bottom(std::max(high, pad_extent(composer, least_target_mm))),
            view.aim_keys);
    box.take_bottom(gap);
  } else {
    const double wide = std::max(pad_extent(composer, usual_target_mm), box.width * 0.3);
    Box side = box.take_right(wide);
    box.take_right(gap);
    aim_pad(composer, side.take_top(std::min(side.height, pad_extent(composer, usual_target_mm))),
            view.aim_keys);
  }
  const Style words = composer.style(Step::Instruction, Face::Bold);
  Box line = box.take_top(2 * composer.line_height(words));
  composer.paragraph(line, view.says, words, 2);
  box.take_top(gap);
  source_keys(composer, box.take_bottom(composer.mm(least_target_mm)), view.sources,
              model.list_page);
  box.take_bottom(gap);
  live_picture(composer, box, model, view.trouble);
}

}  // namespace rackside::kiosk

#include "kiosk/scene/landing.hpp"

namespace rackside::kiosk {
namespace {

constexpr Landing::Time frame{15};  // a picture takes a few milliseconds to draw
constexpr double first_size = 4;    // of its own

}  // namespace

void Landing::follow(const Scene& scene, Time now) {
  if (!scene.landing) return;
  const bool another = !mark_ || mark_->event != scene.landing->event;
  mark_ = scene.landing;
  if (another) began_ = now;
}

std::optional<MarkAt> Landing::at(Time now) const {
  if (!mark_ || now - began_ >= takes) return std::nullopt;
  // In whole frames, so that few sizes of a mark are ever drawn.
  const double part = static_cast<double>((now - began_) / frame * frame.count()) /
                      static_cast<double>(takes.count());
  const double size = 1 + (first_size - 1) * (1 - part) * (1 - part);
  MarkAt mark = mark_->mark;
  const double side = mark.box.width * size;
  mark.box = {mark.box.middle().x - side / 2, mark.box.middle().y - side / 2, side, side};
  return mark;
}

std::optional<Landing::Time> Landing::next_deadline(Time now) const {
  if (!mark_ || now - began_ >= takes) return std::nullopt;
  return began_ + ((now - began_) / frame + 1) * frame;
}

}  // namespace rackside::kiosk

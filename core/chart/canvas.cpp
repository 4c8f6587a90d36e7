#include "core/chart/canvas.hpp"

#include <cairo-svg.h>

#include <numbers>

namespace rackside {

Result<Canvas> Canvas::open(const std::filesystem::path& file, double width, double height) {
  Canvas canvas;
  canvas.file_ = file;
  if (file.extension() == ".svg") {
    canvas.surface_.reset(cairo_svg_surface_create(file.c_str(), width, height));
  } else if (file.extension() == ".png") {
    canvas.surface_.reset(cairo_image_surface_create(CAIRO_FORMAT_RGB24, static_cast<int>(width),
                                                     static_cast<int>(height)));
  } else {
    return failure(ErrorKind::BadInput,
                   "A picture can be an .svg or a .png file; this name ends in neither.",
                   file.string());
  }
  canvas.cairo_.reset(cairo_create(canvas.surface_.get()));
  cairo_set_source_rgb(canvas.cairo_.get(), 1, 1, 1);
  cairo_paint(canvas.cairo_.get());
  cairo_select_font_face(canvas.cairo_.get(), "sans-serif", CAIRO_FONT_SLANT_NORMAL,
                         CAIRO_FONT_WEIGHT_NORMAL);
  return canvas;
}

void Canvas::dip(Ink ink) {
  cairo_t* cairo = cairo_.get();
  switch (ink) {
    case Ink::Text: cairo_set_source_rgb(cairo, 0.13, 0.13, 0.15); return;
    case Ink::Axis: cairo_set_source_rgb(cairo, 0.45, 0.45, 0.48); return;
    case Ink::Faint: cairo_set_source_rgb(cairo, 0.85, 0.85, 0.87); return;
    case Ink::First: cairo_set_source_rgb(cairo, 0.10, 0.40, 0.47); return;
    case Ink::Others: cairo_set_source_rgb(cairo, 0.72, 0.62, 0.46); return;
  }
}

void Canvas::rectangle(const Box& box, Ink ink) {
  dip(ink);
  cairo_rectangle(cairo_.get(), box.left, box.top, box.width, box.height);
  cairo_fill(cairo_.get());
}

void Canvas::line(double x1, double y1, double x2, double y2, Ink ink, double width) {
  dip(ink);
  cairo_set_line_width(cairo_.get(), width);
  cairo_move_to(cairo_.get(), x1, y1);
  cairo_line_to(cairo_.get(), x2, y2);
  cairo_stroke(cairo_.get());
}

void Canvas::dot(double x, double y, double radius, Ink ink) {
  dip(ink);
  cairo_arc(cairo_.get(), x, y, radius, 0, 2 * std::numbers::pi);
  cairo_fill(cairo_.get());
}

void Canvas::text(double x, double y, const std::string& words, double size, Align align) {
  dip(Ink::Text);
  cairo_set_font_size(cairo_.get(), size);
  cairo_text_extents_t extents;
  cairo_text_extents(cairo_.get(), words.c_str(), &extents);
  const double back = align == Align::Left ? 0 : align == Align::Middle ? 0.5 : 1;
  cairo_move_to(cairo_.get(), x - back * extents.x_advance, y);
  cairo_show_text(cairo_.get(), words.c_str());
}

Result<void> Canvas::finish() {
  cairo_surface_flush(surface_.get());
  cairo_status_t status = cairo_status(cairo_.get());
  if (status == CAIRO_STATUS_SUCCESS && file_.extension() == ".png")
    status = cairo_surface_write_to_png(surface_.get(), file_.c_str());
  cairo_.reset();
  cairo_surface_finish(surface_.get());
  if (status == CAIRO_STATUS_SUCCESS) status = cairo_surface_status(surface_.get());
  if (status == CAIRO_STATUS_SUCCESS) return {};
  return failure(ErrorKind::Broken,
                 "The picture could not be written; the log is as it was. Is there room, and may "
                 "you write there?",
                 file_.string());
}

}  // namespace rackside

#include "labels/read/pdf_pages.hpp"

#include <fmt/format.h>
#include <poppler.h>

#include <algorithm>
#include <fstream>
#include <memory>

#include "labels/render/pages.hpp"

namespace rackside {
namespace {

constexpr double points_per_inch = 72;
constexpr double millimetres_per_point = 25.4 / points_per_inch;
// A page that claims more is damaged, or meant to exhaust the machine.
constexpr double largest_side = 2000;  // millimetres

struct Unref {
  void operator()(void* object) const { g_object_unref(object); }
};
using Document = std::unique_ptr<PopplerDocument, Unref>;
using Page = std::unique_ptr<PopplerPage, Unref>;

tl::unexpected<Error> unreadable(const std::filesystem::path& file, std::string_view why) {
  return failure(ErrorKind::BadInput,
                 fmt::format("\"{}\" cannot be read as a PDF file: {}.", file.string(), why));
}

Result<Document> open_document(const std::filesystem::path& file) {
  std::error_code problem;
  const auto whole = std::filesystem::absolute(file, problem);
  if (problem || !std::filesystem::exists(whole, problem))
    return failure(ErrorKind::NotFound, fmt::format("There is no file \"{}\".", file.string()));
  const std::unique_ptr<char, decltype(&g_free)> address(
      g_filename_to_uri(whole.c_str(), nullptr, nullptr), &g_free);
  GError* error = nullptr;
  Document document(poppler_document_new_from_file(address.get(), nullptr, &error));
  if (document) return document;
  const std::string why = error != nullptr ? error->message : "it is damaged";
  g_clear_error(&error);
  return unreadable(file, why);
}

Result<GreyImage> picture_of_page(PopplerPage* page, const std::filesystem::path& file,
                                  Resolution resolution) {
  Pages pages{.count = 1, .paint = [page](cairo_t* canvas, int) {
                cairo_scale(canvas, millimetres_per_point, millimetres_per_point);
                poppler_page_render_for_printing(page, canvas);
              }};
  poppler_page_get_size(page, &pages.width, &pages.height);
  pages.width *= millimetres_per_point;
  pages.height *= millimetres_per_point;
  if (!(std::max(pages.width, pages.height) <= largest_side))
    return unreadable(file, "one of its pages is larger than any paper");
  return picture_of(pages, 0, resolution);
}

}  // namespace

Result<void> for_each_pdf_page(const std::filesystem::path& file, Resolution resolution,
                               const std::function<void(GreyImage&&)>& visit) {
  const auto document = open_document(file);
  if (!document) return tl::unexpected(document.error());
  const int count = poppler_document_get_n_pages(document->get());
  for (int index = 0; index < count; ++index) {
    const Page page(poppler_document_get_page(document->get(), index));
    if (!page) return unreadable(file, fmt::format("page {} is damaged", index + 1));
    auto picture = picture_of_page(page.get(), file, resolution);
    if (!picture) return tl::unexpected(picture.error());
    visit(*std::move(picture));
  }
  return {};
}

bool looks_like_pdf(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  char start[5] = {};
  return in.read(start, sizeof start) && std::string_view(start, sizeof start) == "%PDF-";
}

}  // namespace rackside

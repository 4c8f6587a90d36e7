#pragma once
// Pieces that several screens share.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "kiosk/model/model.hpp"
#include "kiosk/scene/composer.hpp"
#include "kiosk/view/list_view.hpp"
#include "kiosk/view/strip_view.hpp"
#include "kiosk/view/tub_view.hpp"

namespace rackside::kiosk {

/// The panel less its margin.
[[nodiscard]] Box page(const Composer& composer);

/// The way back, with a title beside it, across the top of `box`.
void heading(Composer& composer, Box& box, std::string_view title, std::string_view detail = {});

/// A row of equal keys along the bottom of `box`.
struct KeyRow {
  std::string word;
  Intent intent;
  Weight weight = Weight::Plain;
};
void key_row(Composer& composer, Box& box, const std::vector<KeyRow>& keys);

/// The notice, in place of whatever stands at the bottom of `box`; takes nothing when there is
/// none.
void notice_line(Composer& composer, Box& box, const std::optional<Notice>& notice);

/// How many rows of this height fit, and which page of how many is shown.
struct Pages {
  std::size_t rows = 1;
  std::size_t page = 0;
  std::size_t count = 1;
  std::size_t first = 0;  // index of the first entry on the page
};
[[nodiscard]] Pages pages_of(std::size_t entries, std::size_t rows, int wanted);

/// Keys to turn pages, down the right of `box`; takes nothing when there is one page.
void page_keys(Composer& composer, Box& box, const Pages& pages);
/// What they take of `box` where there are several pages.
[[nodiscard]] double page_keys_width(const Composer& composer, const Box& box);

/// The way back, a title, and the keys to turn pages, all in one row: for screens that need every
/// millimetre below. `more` are keys beside those that turn.
void turning_heading(Composer& composer, Box& box, std::string_view title, std::string_view detail,
                     const Pages& pages, const std::vector<KeyRow>& more = {});
[[nodiscard]] double heading_height(const Composer& composer);

/// The notice with the way to undo what was saved; takes nothing when there is neither.
void undo_line(Composer& composer, Box& box, const Model& model);

/// Tubs as rows to touch.
void tub_rows(Composer& composer, Box box, const std::vector<TubLine>& lines, const Pages& pages);
[[nodiscard]] double tub_row_height(const Composer& composer);
/// As many of the tubs as fit, with keys to turn pages.
void tub_list(Composer& composer, Box box, const Model& model,
              const std::vector<const EnclosureState*>& tubs);
[[nodiscard]] std::size_t rows_in(const Box& box, double row);

/// The moult strip, into the whole of `box`.
void moult_strip(Composer& composer, Box box, const StripView& view);
/// The same in a list: the last moult, today, and where half and nine tenths of the forecast lie.
void small_moult_strip(Composer& composer, const Box& box, const SmallStrip& strip);

/// A row to touch: a name on the left, what there is to say of it on the right.
struct NamedRow {
  std::string name;
  std::string detail;
  Intent intent;
  Face face = Face::Bold;
  Ink ink = Ink::Text;
};
void named_row(Composer& composer, Box box, const NamedRow& row);

/// One record as a line.
void record_line(Composer& composer, Box box, const RecordLine& line);

}  // namespace rackside::kiosk

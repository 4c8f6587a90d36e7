// What workers bring about a cover.

#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {

void on_cover_foreseen(Model& model, const CoverForeseen& foreseen) {
  CoverPage& page = model.cover_page;
  if (page.shown != foreseen.cover) return;
  page.reading = false;
  if (foreseen.brief)
    page.brief = *foreseen.brief;
  else
    tell(model, Tone::Problem, foreseen.brief.error().sentence);
}

void on_return_told(Model& model, const ReturnTold& told) {
  ReturnPage& page = model.return_page;
  if (page.shown != told.cover) return;
  page.reading = false;
  if (told.report)
    page.report = *told.report;
  else
    tell(model, Tone::Problem, told.report.error().sentence);
}

void on_cover_worked(Model& model, const CoverWorked& worked) {
  if (model.cover_page.shown == worked.cover) model.cover_page.worked = worked.part;
  if (model.return_page.shown == worked.cover) model.return_page.worked = worked.part;
}

void on_sheet_printed(Model& model, const SheetPrinted& printed) {
  model.cover_page.printing = model.return_page.printing = false;
  if (printed.outcome)
    tell(model, Tone::Done, *printed.outcome);
  else
    tell(model, Tone::Problem, printed.outcome.error().sentence);
}

}  // namespace rackside::kiosk

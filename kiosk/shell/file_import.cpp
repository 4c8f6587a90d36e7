#include "kiosk/shell/file_import.hpp"

#include <filesystem>

#include "core/file/read_text.hpp"

namespace rackside::kiosk {
namespace {

Result<ImportPlan> plan(const std::string& path, const std::string& text, LogStore& log,
                        Clock& clock, IdSource& ids) {
  const SourceFile file{std::filesystem::path(path).filename().string(), text};
  if (kind_of_file(text) == FileKind::Events)
    return plan_import(std::nullopt, file, log, clock, ids);
  return plan_import(file, std::nullopt, log, clock, ids);
}

RecordCounts counts_of(const ImportPlan& plan) {
  return {plan.animals, plan.tubs, plan.events, plan.animals_known + plan.events_known};
}

// Whose labels are to be printed. Known once the codes are: with the plan that is written.
std::vector<Code> tubs_of(const ImportPlan& plan) {
  std::vector<Code> tubs;
  for (const Draft& draft : plan.drafts)
    if (std::holds_alternative<EnclosureAdded>(draft.details)) tubs.push_back(*draft.enclosure);
  return tubs;
}

}  // namespace

void FileImport::look_into(const std::string& path) {
  reading_.thread.add([this, path] {
    results_.post(
        FileLookedInto{path, read_text(path).and_then([&](const std::string& text) {
                         return plan(path, text, reading_.log, clock_, reading_.ids).map(counts_of);
                       })});
  });
}

// New codes are dealt out where other new tubs get theirs, so that no code is given twice. Records
// bring no codes, but may be many: they are looked at where nobody waits.
void FileImport::write(const std::string& path) {
  stopping_ = false;
  reading_.thread.add([this, path] {
    auto text = read_text(path);
    if (!text) return results_.post(BroughtIn{{}, text.error(), {}});
    if (kind_of_file(*text) == FileKind::Events) return plan_and_write(reading_, path, *text);
    writing_.thread.add(
        [this, path, read = std::move(*text)] { plan_and_write(writing_, path, read); });
  });
}

void FileImport::plan_and_write(const Side& side, const std::string& path,
                                const std::string& text) {
  auto planned = plan(path, text, side.log, clock_, side.ids);
  if (!planned) return results_.post(BroughtIn{{}, planned.error(), {}});
  const auto kept = std::make_shared<const ImportPlan>(std::move(*planned));
  writing_.thread.add([this, kept] { write_part(kept, 0); });
}

void FileImport::write_part(std::shared_ptr<const ImportPlan> plan, std::size_t done) {
  const std::size_t all = plan->drafts.size();
  std::optional<Error> problem;
  if (done < all && !stopping_) {
    const auto written = take_over_part(*plan, done, writing_.log, clock_);
    if (written && *written < all) {
      results_.post(PartBroughtIn{{*written, all}});
      return writing_.thread.add([this, plan, next = *written] { write_part(plan, next); });
    }
    if (written)
      done = *written;
    else
      problem = written.error();
  }
  auto tubs = tubs_of(*plan);
  results_.post(BroughtIn{{done, all}, std::move(problem), std::move(tubs)});
}

}  // namespace rackside::kiosk

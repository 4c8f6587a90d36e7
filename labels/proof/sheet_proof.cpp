#include <algorithm>
#include <optional>
#include <thread>

#include "labels/proof/label_proof.hpp"

namespace rackside {
namespace {

constexpr std::size_t most_threads = 8;

}  // namespace

std::vector<LabelProof> prove_sheet(const LabelSheet& sheet) {
  std::vector<std::optional<LabelProof>> proofs(sheet.labels.size());
  const std::size_t threads =
      std::clamp<std::size_t>(std::thread::hardware_concurrency(), 1, most_threads);
  const auto prove_every = [&](std::size_t first) {
    const PangoText text;
    for (std::size_t i = first; i < sheet.labels.size(); i += threads)
      proofs[i] = prove(sheet.labels[i], printed_picture(sheet, sheet.labels[i], text), sheet);
  };
  std::vector<std::jthread> workers;
  for (std::size_t first = 1; first < std::min(threads, sheet.labels.size()); ++first)
    workers.emplace_back(prove_every, first);
  prove_every(0);
  workers.clear();
  std::vector<LabelProof> list;
  for (auto& proof : proofs) list.push_back(*std::move(proof));
  return list;
}

}  // namespace rackside

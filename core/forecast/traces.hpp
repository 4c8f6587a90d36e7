#pragma once
// What was seen in the middle of a finished cycle of a moult that nobody noticed: an animal that
// goes off its food, looks like one before a moult, and eats again, brighter than before.

#include <vector>

#include "core/forecast/collection_model.hpp"
#include "core/forecast/cycle_chain.hpp"
#include "core/forecast/level.hpp"

namespace rackside {

/// How much better two cycles in a row explain what was seen than one does: the log of the ratio of
/// the likelihoods, held within what a model of habits can be trusted with.
[[nodiscard]] double trace_of_hidden_moult(const FinishedCycle& cycle, const Habits& habits,
                                           SignSet mute);

/// The same for each cycle of `history` whose length leaves room for doubt; 0 for others.
[[nodiscard]] std::vector<double> traces_of(const CollectionModel& model, const Evidence& evidence,
                                            const CycleHistory& history);
void add_traces(CycleHistory& history, const std::vector<double>& traces);

}  // namespace rackside

// The belief about a cycle, with moults that nobody saw, against every history written out: each
// day of each moult with each length of premoult, and each way through hardening, feeding and
// fasting between the observations. Nothing is shared with the model but the laws of the parts.

#include "core/forecast/unseen.hpp"

#include <cmath>

#include "core/forecast/normal_points.hpp"
#include "tests/frame.hpp"

using namespace rackside;

namespace {

struct Phases {
  double all = 0, premoult = 0, hardening = 0, fasting = 0;

  void add(const Phases& other, double weight) {
    all += weight * other.all;
    premoult += weight * other.premoult;
    hardening += weight * other.hardening;
    fasting += weight * other.fasting;
  }
};

class Histories {
 public:
  Histories(const Character& character, const RunningCycle& cycle, double now)
      : character_(character), cycle_(cycle), now_(now), cells_(lay_cells(character, cycle, now)) {
    after_.resize(cells_.past);
    for (std::size_t i = cells_.past; i-- > 0;) after_[i] = after(i);
  }

  Belief run() const {
    Belief belief;
    belief.cells = cells_.cells;
    Phases sum;
    double unseen = 0;
    for (std::size_t i = 0; i < belief.cells.size(); ++i) {
      const Phases part = i < cells_.past ? moulted(i) : to_come(belief.cells[i].middle());
      belief.cells[i].probability *= part.all;
      sum.add(part, cells_.cells[i].probability);
      if (i < cells_.past) unseen += belief.cells[i].probability;
    }
    for (MoultCell& cell : belief.cells) cell.probability /= sum.all;
    belief.p_premoult = sum.premoult / sum.all;
    belief.p_hardening = sum.hardening / sum.all;
    belief.p_fasting = sum.fasting / sum.all;
    belief.p_moulted_unseen = unseen / sum.all;
    return belief;
  }

 private:
  // Every way through the steps from `first` on until premoult begins on `turn`, or until now.
  Phases open(double moult, double log_length, double first, double turn) const {
    const bool until_now = turn > now_;
    Phases sum;
    std::vector<const Step*> steps;
    for (const Step& step : cycle_.steps)
      if (step.day >= first && step.day < turn) steps.push_back(&step);
    const std::size_t moves = steps.size() + (until_now ? 1 : 0);
    for (int path = 0; path < std::pow(3, moves); ++path) {
      double weight = 1, day = moult;
      int phase = 0;
      for (std::size_t k = 0, code = static_cast<std::size_t>(path); k < moves; ++k, code /= 3) {
        const int next = static_cast<int>(code % 3);
        const double to = k < steps.size() ? steps[k]->day : now_;
        weight *= moves_to(phase, next, log_length, day - moult, to - moult);
        if (k < steps.size()) weight *= seen(*steps[k], next, to - moult < fresh_days);
        phase = next;
        day = to;
      }
      sum.all += weight;
      if (until_now && phase == 0) sum.hardening += weight;
      if (until_now && phase == 2) sum.fasting += weight;
    }
    return sum;
  }
  double moves_to(int from, int to, double log_length, double age, double later) const {
    const Habits& h = character_.habits;
    const double stays =
        still_hard(h.hardening, log_length, later) / still_hard(h.hardening, log_length, age);
    const Change change = change_in(h, later - age);
    if (from == 0 && to == 0) return stays;
    const double soft = from == 0 ? 1 - stays : 1;
    if (to == 0) return 0;
    if (from == 2) return to == 2 ? 1 - change.to_feed : change.to_feed;
    return soft * (to == 2 ? change.to_fast : 1 - change.to_fast);
  }
  static double seen(const Step& step, int phase, bool fresh) {
    if (phase == 0) return step.hardening;
    if (phase == 1) return fresh ? step.feeding_fresh : step.feeding;
    return fresh ? step.fasting_fresh : step.fasting;
  }
  double in_premoult(double from, double to) const {
    double product = 1;
    for (const Step& step : cycle_.steps)
      if (step.day >= from && step.day < to) product *= step.premoult;
    return product;
  }
  double unnoticed(double moult) const {
    double passed_over = 1;
    for (const double visit : cycle_.visits)
      if (visit > moult) passed_over *= 1 - character_.noticed_a_visit;
    return character_.unseen_share + (1 - character_.unseen_share) * passed_over;
  }
  double premoult_days(double z, double cycle) const {
    const LengthLaw& law = character_.habits.premoult;
    return std::min(longest_premoult * cycle,
                    std::exp(law.mean_for(std::log(cycle)) + law.spread * z));
  }

  Phases to_come(double moult) const {
    static const NormalPoints<41> lengths(3.2);
    Phases sum;
    for (std::size_t k = 0; k < lengths.z.size(); ++k) {
      const double turn = moult - premoult_days(lengths.z[k], moult - cycle_.start());
      Phases part = open(cycle_.start(), character_.lengths.all[0].mean, -1, turn);
      if (turn <= now_) part.premoult = part.all *= in_premoult(turn, now_ + 1);
      sum.add(part, lengths.weight[k]);
    }
    return sum;
  }
  Phases moulted(std::size_t cell) const {
    static const NormalPoints<41> lengths(3.2);
    const double moult = cells_.cells[cell].middle();
    Phases sum;
    for (std::size_t k = 0; k < lengths.z.size(); ++k) {
      const double turn = moult - premoult_days(lengths.z[k], moult - cycle_.start());
      const double before = open(cycle_.start(), character_.lengths.all[0].mean, -1, turn).all *
                            in_premoult(turn, moult) * unnoticed(moult);
      sum.add(after_[cell], lengths.weight[k] * before);
    }
    return sum;
  }
  // All that may have followed a moult in this cell.
  Phases after(std::size_t cell) const {
    static const NormalPoints<15> lengths(2.8);
    static const NormalPoints<7> premoults(2.4);
    const double moult = cells_.cells[cell].middle();
    Phases sum;
    for (const LengthComponent& c : character_.next_length)
      for (std::size_t k = 0; k < 15; ++k) {
        const double days = std::exp(c.mean + c.deviation * lengths.z[k]);
        for (std::size_t p = 0; p < 7; ++p)
          sum.add(followed(cell, moult, days, premoult_days(premoults.z[p], days)),
                  c.weight * lengths.weight[k] * premoults.weight[p]);
      }
    return sum;
  }
  Phases followed(std::size_t cell, double moult, double days, double premoult) const {
    const double turn = moult + days - premoult;
    if (turn >= now_) return open(moult, character_.next_length[0].mean, moult, HUGE_VAL);
    const double next = moult + days;
    Phases part;
    const double before = open(moult, character_.next_length[0].mean, moult, turn).all *
                          in_premoult(turn, std::min(next, now_ + 1));
    if (next >= now_) {
      part.all = part.premoult = before;
      return part;
    }
    // By the model's cells: a cycle that ends in the cell it began in counts in the one after.
    std::size_t third = cell + 1;
    while (third < cells_.past && cells_.cells[third].to < next) ++third;
    if (third < cells_.past) part.add(after_[third], before * unnoticed(next));
    return part;
  }

  const Character& character_;
  const RunningCycle& cycle_;
  double now_;
  Cells cells_;
  std::vector<Phases> after_;
};

Character short_lived() {
  Character character;
  character.lengths.all = {{{0.9, std::log(22), 0.5}, {0.1, std::log(22), 0.9}}};
  character.next_length = {{{0.9, std::log(15), 0.3}, {0.1, std::log(15), 0.8}}};
  character.habits = prior_habits(documented_priors(), {}, Stage::Juvenile);
  character.habits.premoult.log_median = std::log(5);
  character.habits.premoult.log_reference = std::log(22);
  character.habits.hardening.log_median = std::log(3);
  character.unseen_share = 0.2;
  character.noticed_a_visit = 0.4;
  return character;
}

// Approx alone would allow a hundred thousandth of the value on top.
Approx exactly(double value) { return Approx(value).epsilon(0).margin(1e-9); }

void check_alike(const Belief& told, const Belief& counted) {
  CHECK(told.p_premoult == exactly(counted.p_premoult));
  CHECK(told.p_hardening == exactly(counted.p_hardening));
  CHECK(told.p_fasting == exactly(counted.p_fasting));
  CHECK(told.p_moulted_unseen == exactly(counted.p_moulted_unseen));
  REQUIRE(told.cells.size() == counted.cells.size());
  for (std::size_t i = 0; i < told.cells.size(); ++i) {
    INFO(told.cells[i].from << " to " << told.cells[i].to);
    CHECK(told.cells[i].probability == exactly(counted.cells[i].probability));
  }
}

}  // namespace

TEST_CASE("with moults nobody saw the belief is that of all histories written out") {
  const Character character = short_lived();
  std::vector<Observation> seen;
  for (const auto& [day, outcome] : {std::pair{4.2, Outcome::Took},
                                     {12.2, Outcome::Refused},
                                     {17.2, Outcome::Refused},
                                     {26.2, Outcome::Took}})
    seen.push_back({.day = day, .outcome = outcome});
  seen.push_back({.day = 29.2, .kind = Observation::Kind::Look, .signs = {Sign::BrighterColours}});
  for (const double now : {29.7, 36.7, 48.7}) {
    RunningCycle cycle;
    cycle.steps = steps_of(seen, character.habits, {});
    cycle.visits = {20.1, 29.2};
    const Belief counted = Histories(character, cycle, now).run();
    check_alike(believe(character, cycle, now), counted);
    CHECK(counted.p_moulted_unseen > 0.3);  // the branch that matters here has weight
    CHECK(counted.p_moulted_unseen < 0.999);
  }
}

#include "labels/reader/soft_decoder.hpp"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <numeric>

#include "labels/reader/code_space.hpp"

namespace rackside {
namespace {

using Word = std::array<std::uint64_t, most_bits / 64 + 1>;

bool bit(const Word& word, std::size_t i) { return word[i / 64] >> (i % 64) & 1; }
void flip(Word& word, std::size_t i) { word[i / 64] ^= std::uint64_t{1} << (i % 64); }
void add(Word& to, const Word& other) {
  for (std::size_t i = 0; i < to.size(); ++i) to[i] ^= other[i];
}

// A row of the generator matrix, its columns ordered from the surest bit to the least sure, and
// the free bits that make it.
struct Row {
  Word bits{};
  FreeBits free = 0;
};

// The cost of disagreeing with the beliefs, summed byte by byte from tables.
class Costs {
 public:
  explicit Costs(const std::vector<float>& ordered) : bytes_((ordered.size() + 7) / 8) {
    for (std::size_t byte = 0; byte < bytes_; ++byte)
      for (std::size_t pattern = 1; pattern < 256; ++pattern) {
        const std::size_t low = pattern & (~pattern + 1);
        const std::size_t at = byte * 8 + static_cast<std::size_t>(std::countr_zero(low));
        table_[byte][pattern] =
            table_[byte][pattern ^ low] + (at < ordered.size() ? ordered[at] : 0);
      }
  }
  [[nodiscard]] float of(const Word& wrong) const {
    float sum = 0;
    for (std::size_t byte = 0; byte < bytes_; ++byte)
      sum += table_[byte][wrong[byte / 8] >> (byte % 8 * 8) & 0xFF];
    return sum;
  }

 private:
  std::size_t bytes_;
  std::array<std::array<float, 256>, most_bits / 8 + 1> table_{};
};

struct Best {
  float cost;
  std::optional<Code> code;

  void offer(const Costs& costs, const Word& wrong, FreeBits free) {
    const float cost_here = costs.of(wrong);
    if (cost_here >= cost) return;
    if (const auto found = code_of(free)) {
      cost = cost_here;
      code = found;
    }
  }
};

std::vector<Row> ordered_rows(const CodeSpace& space, const std::vector<std::size_t>& order) {
  std::vector<Row> rows(free_bits);
  for (std::size_t r = 0; r < free_bits; ++r) {
    rows[r].free = FreeBits{1} << r;
    for (std::size_t i = 0; i < order.size(); ++i)
      if (space.rows[r][order[i]]) flip(rows[r].bits, i);
  }
  return rows;
}

// Brings the rows to identity on the surest independent columns; those columns, row by row.
std::vector<std::size_t> reduce(std::vector<Row>& rows, std::size_t length) {
  std::vector<std::size_t> pivots;
  for (std::size_t column = 0; column < length && pivots.size() < rows.size(); ++column) {
    const std::size_t next = pivots.size();
    std::size_t pivot = next;
    while (pivot < rows.size() && !bit(rows[pivot].bits, column)) ++pivot;
    if (pivot == rows.size()) continue;
    std::swap(rows[pivot], rows[next]);
    for (std::size_t r = 0; r < rows.size(); ++r)
      if (r != next && bit(rows[r].bits, column)) {
        add(rows[r].bits, rows[next].bits);
        rows[r].free ^= rows[next].free;
      }
    pivots.push_back(column);
  }
  return pivots;
}

Row sum(Row row, const Row& other) {
  add(row.bits, other.bits);
  row.free ^= other.free;
  return row;
}

// All words that differ from `start` in up to `depth` of the surest places.
void offer_all(Best& best, const Costs& costs, const std::vector<Row>& rows, const Row& start,
               std::size_t from, int depth) {
  best.offer(costs, start.bits, start.free);
  if (depth == 0) return;
  for (std::size_t i = from; i < rows.size(); ++i)
    offer_all(best, costs, rows, sum(start, rows[i]), i + 1, depth - 1);
}

std::vector<std::size_t> surest_first(const std::vector<float>& beliefs) {
  std::vector<std::size_t> order(beliefs.size());
  std::iota(order.begin(), order.end(), 0);
  std::ranges::sort(order, std::greater{}, [&](std::size_t i) { return std::abs(beliefs[i]); });
  return order;
}

}  // namespace

std::optional<Decoded> decode_softly(int version, const std::vector<float>& beliefs, int depth) {
  const CodeSpace& space = code_space(version);
  const auto order = surest_first(beliefs);
  auto rows = ordered_rows(space, order);
  const auto pivots = reduce(rows, order.size());
  std::vector<float> strengths;
  Row start;  // what is wrong with the word of the surest bits
  for (std::size_t i = 0; i < order.size(); ++i) {
    strengths.push_back(std::abs(beliefs[order[i]]));
    if ((beliefs[order[i]] > 0) != space.fixed[order[i]]) flip(start.bits, i);
  }
  for (std::size_t r = 0; r < pivots.size(); ++r)
    if (bit(start.bits, pivots[r])) start = sum(start, rows[r]);
  const float total = std::accumulate(strengths.begin(), strengths.end(), 0.0f);
  // Beyond a third of the evidence against it nothing can be accepted.
  Best best{total / 3, std::nullopt};
  offer_all(best, Costs(strengths), rows, start, 0, depth);
  if (!best.code) return std::nullopt;
  const double against = best.cost / total;
  return Decoded{*best.code, against, chance_log2(strengths, against)};
}

double chance_log2(const std::vector<float>& strengths, double against) {
  const double total = std::accumulate(strengths.begin(), strengths.end(), 0.0);
  if (total <= 0) return 0;
  double least = 0;
  for (double tilt = 0.5; tilt < 20; tilt *= 1.3) {
    const double t = tilt * static_cast<double>(strengths.size()) / total;
    double bound = t * against * total / std::log(2.0);
    for (const float strength : strengths) bound += std::log2((1 + std::exp(-t * strength)) / 2);
    least = std::min(least, bound);
  }
  return least + code_count_log2;
}

}  // namespace rackside

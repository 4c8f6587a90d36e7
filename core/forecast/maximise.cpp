#include "core/forecast/maximise.hpp"

#include <cmath>

namespace rackside {
namespace {

using Vector = std::vector<double>;

double dot(const Vector& a, const Vector& b) {
  double sum = 0;
  for (std::size_t i = 0; i < a.size(); ++i) sum += a[i] * b[i];
  return sum;
}

// A matrix that stays symmetric: the inverse of minus the second derivatives, as learnt so far.
class InverseCurvature {
 public:
  explicit InverseCurvature(std::size_t size) : size_(size), entries_(size * size) { reset(1); }

  void reset(double scale) {
    for (std::size_t i = 0; i < size_; ++i)
      for (std::size_t j = 0; j < size_; ++j) at(i, j) = i == j ? scale : 0;
  }
  [[nodiscard]] Vector times(const Vector& v) const {
    Vector result(size_);
    for (std::size_t i = 0; i < size_; ++i)
      for (std::size_t j = 0; j < size_; ++j) result[i] += entries_[i * size_ + j] * v[j];
    return result;
  }
  void learn(const Vector& moved, const Vector& gradient_fell) {
    const double along = dot(moved, gradient_fell);
    if (along <= 1e-12) return;
    const Vector turned = times(gradient_fell);
    const double factor = (1 + dot(gradient_fell, turned) / along) / along;
    for (std::size_t i = 0; i < size_; ++i)
      for (std::size_t j = 0; j < size_; ++j)
        at(i, j) +=
            factor * moved[i] * moved[j] - (turned[i] * moved[j] + moved[i] * turned[j]) / along;
  }

 private:
  double& at(std::size_t i, std::size_t j) { return entries_[i * size_ + j]; }

  std::size_t size_;
  Vector entries_;
};

Vector gradient_at(const Objective& objective, Vector point, double here, const Ascent& ascent) {
  const double step = ascent.step;
  Vector gradient(point.size());
  for (std::size_t i = 0; i < point.size(); ++i) {
    const double middle = point[i];
    point[i] = middle + step;
    const double above = objective(point);
    if (ascent.differences == Differences::Forward) {
      gradient[i] = (above - here) / step;
    } else {
      point[i] = middle - step;
      gradient[i] = (above - objective(point)) / (2 * step);
    }
    point[i] = middle;
  }
  return gradient;
}

Vector along(const Vector& from, const Vector& direction, double length) {
  Vector point = from;
  for (std::size_t i = 0; i < point.size(); ++i) point[i] += length * direction[i];
  return point;
}

}  // namespace

Vector maximise(const Objective& objective, Vector start, const Ascent& ascent) {
  Vector point = std::move(start);
  double value = objective(point);
  Vector gradient = gradient_at(objective, point, value, ascent);
  InverseCurvature inverse(point.size());
  inverse.reset(1 / std::max(1.0, std::sqrt(dot(gradient, gradient))));
  for (int step = 0; step < ascent.most_steps; ++step) {
    Vector direction = inverse.times(gradient);
    double slope = dot(direction, gradient);
    if (!(slope > 0)) {
      inverse.reset(1e-3);
      direction = inverse.times(gradient);
      slope = dot(direction, gradient);
    }
    double length = 1;
    Vector next = along(point, direction, length);
    double there = objective(next);
    while (!(there >= value + 1e-4 * length * slope) && length > 1e-9) {
      length /= 3;
      next = along(point, direction, length);
      there = objective(next);
    }
    if (!(there > value)) return point;
    const double gained = there - value;
    const Vector before = std::move(gradient);
    gradient = gradient_at(objective, next, there, ascent);
    Vector moved = next;
    Vector fell = before;
    for (std::size_t i = 0; i < moved.size(); ++i) {
      moved[i] -= point[i];
      fell[i] -= gradient[i];
    }
    inverse.learn(moved, fell);
    point = std::move(next);
    value = there;
    if (gained < ascent.tolerance) return point;
  }
  return point;
}

double curvature(const Objective& objective, Vector point, std::size_t index, double step) {
  const double here = objective(point);
  const double middle = point[index];
  point[index] = middle + step;
  const double above = objective(point);
  point[index] = middle - step;
  const double below = objective(point);
  return (above - 2 * here + below) / (step * step);
}

}  // namespace rackside

#pragma once
// An estimate of print quality in the manner of ISO/IEC 15415: symbol contrast, modulation and
// unused error correction, each graded A to D or F, the worst one counting.
//
// It is an estimate and no verifier's measurement: it looks at a simulated print, not at paper; it
// assumes how much light paper and ink give back; and it leaves out what a simulated print cannot
// fail (axial and grid non-uniformity, fixed pattern damage).

#include <vector>

#include "labels/reader/grey_image.hpp"
#include "labels/symbol/symbol.hpp"

namespace rackside {

/// A is best; F does not pass.
enum class Grade { A, B, C, D, F };
[[nodiscard]] char letter_of(Grade grade);

struct QualityEstimate {
  double contrast = 0;    // percent of full reflectance
  double modulation = 0;  // percent, of the weakest codeword not given up to error correction
  double unused = 0;      // percent of the error correction
  Grade contrast_grade = Grade::F;
  Grade modulation_grade = Grade::F;
  Grade unused_grade = Grade::F;

  [[nodiscard]] Grade overall() const;
};

/// Reflectance of every module, 0 to 1, row by row, quiet zone not among them.
using Reflectances = std::vector<double>;

/// The mean over the middle 0.8 of each module (ISO/IEC 15415's usual aperture), from a picture in
/// which the symbol's corner is at x, y and a module has `module` pixels. Black counts as the light
/// that thermal ink gives back, white as that of label paper (common practice, no source).
[[nodiscard]] Reflectances reflectances_of(const GreyImage& image, int side, double x, double y,
                                           double module);

/// `symbol` is what should have been printed.
[[nodiscard]] QualityEstimate estimate_quality(const Reflectances& measured, const Symbol& symbol);

}  // namespace rackside

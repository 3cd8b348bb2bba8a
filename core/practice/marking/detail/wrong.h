#pragma once

#include <span>
#include <vector>

#include "core/practice/lines/student_line.h"
#include "core/practice/marking/detail/papers.h"
#include "core/practice/marking/replay.h"
#include "core/practice/marking/wrong_values.h"

namespace wardchalk::detail {

/// Where a mistake is made: a step of the key, the figures it is made with, and what it should come to there.
struct WrongGround {
  const Worksheet& key;
  const Papers& papers;
  const Replay& right;
  StepId step;
  bool weightAnswered = false;  ///< the student has turned it into kg on a line before

  [[nodiscard]] const Number& rightValue() const { return *right.exact(step); }
  [[nodiscard]] const Chain* chain() const { return chainOf(key, step); }
};

/// Whether medicine is ordered for each minute or hour.
[[nodiscard]] inline bool isRateOrder(const Worksheet& key) {
  return key.given.order.dose && key.given.order.dose->isRate();
}

/// The surface by Mosteller's formula with this constant.
[[nodiscard]] inline Number surface(const Number& height, const Number& weight, const Number& constant) {
  return (height * weight / constant).rootCut(endlessRootDecimals);
}

/// Collects wrong values. One that equals the right value is kept apart: it is a mistake that cannot be seen.
class WrongList {
 public:
  explicit WrongList(Number right) : right_(std::move(right)) {}
  void add(MistakeId mistake, const Number& value);
  void times(MistakeId mistake, const Number& factor) { add(mistake, right_ * factor); }
  [[nodiscard]] const Number& right() const { return right_; }
  [[nodiscard]] std::vector<WrongValue> take() { return std::move(values_); }
  [[nodiscard]] const std::vector<MistakeId>& hidden() const { return hidden_; }

 private:
  Number right_;
  std::vector<WrongValue> values_;
  std::vector<MistakeId> hidden_;
};

// Mistakes made in one step itself, by what the step does. Each adds what it knows and leaves the rest alone.
void addWrongWeight(const WrongGround& ground, WrongList& list);      // wrong_size.cpp
void addWrongHeight(const WrongGround& ground, WrongList& list);      // wrong_size.cpp
void addWrongSurface(const WrongGround& ground, WrongList& list);     // wrong_size.cpp
void addWrongSharing(const WrongGround& ground, WrongList& list);     // wrong_dose.cpp
void addWrongEnd(const WrongGround& ground, WrongList& list);         // wrong_dose.cpp
void addWrongConversion(const WrongGround& ground, WrongList& list);  // wrong_dose.cpp
void addWrongPoint(const WrongGround& ground, WrongList& list);       // wrong_dose.cpp
void addWrongAmount(const WrongGround& ground, WrongList& list);      // wrong_amount.cpp
void addWrongMixing(const WrongGround& ground, WrongList& list);      // wrong_amount.cpp
void addWrongRate(const WrongGround& ground, WrongList& list);        // wrong_rate.cpp
void addWrongDilution(const WrongGround& ground, WrongList& list);    // wrong_rate.cpp

// Further mistakes, which a student is told and for which no problem is refused: so many of them lie near one
// another that few problems would be left.
void addFurtherSize(const WrongGround& ground, WrongList& list);    // further_size.cpp
void addFurtherDose(const WrongGround& ground, WrongList& list);    // further_dose.cpp
void addFurtherAmount(const WrongGround& ground, WrongList& list);  // further_amount.cpp
void addFurtherRate(const WrongGround& ground, WrongList& list);    // further_rate.cpp

// Rarer ones, thought of only where none of the others fits: a sum that is set up from other figures of the
// papers.
void addRareSize(const WrongGround& ground, WrongList& list);    // rare_size.cpp
void addRareDose(const WrongGround& ground, WrongList& list);    // rare_dose.cpp
void addRareAmount(const WrongGround& ground, WrongList& list);  // rare_amount.cpp

}  // namespace wardchalk::detail

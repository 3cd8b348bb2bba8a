#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/practice/lines/student_working.h"
#include "core/practice/lines/syringe_answer.h"
#include "core/practice/marking/line_mark.h"
#include "core/practice/marking/right_values.h"
#include "core/practice/marking/verdict_answer.h"
#include "core/practice/problem/problem.h"

namespace wardchalk {

namespace detail {
struct NumberLine;
}

/// The verdict that the key gives, or that the student's own numbers give where they were carried on.
[[nodiscard]] VerdictWord verdictWordOf(const Worksheet& key, const Replay& carried);

/// What a class may ask for beyond what is right in itself.
struct MarkingTerms {
  bool wantsUnits = false;   ///< a right number that needs a unit and has none is not right
  bool wantsReason = false;  ///< "unsafe" where the key asks is right only with its reason
};

/// Marks the lines of one problem in their order. Each line is judged on the student's own earlier answers,
/// so that one mistake costs one mark.
class Marking {
 public:
  explicit Marking(const Problem& problem, MarkingTerms terms = {});

  /// Marks the answer to `problem.asks[ask]` and keeps it for the lines after it. An answer given anew
  /// replaces the earlier one; later lines must then be marked again.
  LineMark mark(std::size_t ask, std::string_view text);

  /// The student's own answers before this line, as far as they are numbers.
  [[nodiscard]] std::vector<CarriedAnswer> carriedTo(std::size_t ask) const;

 private:
  [[nodiscard]] LineMark markVerdictWord(const Replay& carried, std::string_view text) const;
  [[nodiscard]] LineMark markSyringe(const Replay& carried, const SyringeAnswer& said,
                                     std::span<const CarriedAnswer> earlier) const;
  [[nodiscard]] bool isPrinted(StepId step, std::string_view text) const;
  LineMark markNumber(std::size_t ask, StepId step, std::string_view text);
  LineMark markRead(std::size_t ask, StepId step, const StudentWorking& working, const Replay& carried);
  LineMark markAnswer(std::size_t ask, StepId step, const StudentWorking& working,
                      const detail::NumberLine& number, const Replay& carried);
  void remarkConstant(const StudentWorking& working, LineMark& mark) const;
  void holdToTerms(LineMark& mark) const;
  [[nodiscard]] bool weighsInPounds() const;
  [[nodiscard]] bool isPreparedOnly(StepId step) const;
  const RightValues& rightValues(bool prepared);

  const Problem& problem_;
  MarkingTerms terms_;
  std::optional<RightValues> right_;  // worked out for the first number that is marked
  std::optional<Problem> allowed_;    // as if the order might be given: for what is prepared where it may not
  std::optional<RightValues> allowedRight_;
  std::vector<std::optional<CarriedAnswer>> answers_;  // one for each ask
};

/// Marks all answers, given in the order of the asks; an answer that is missing is an empty text.
[[nodiscard]] std::vector<LineMark> markAnswers(const Problem& problem, std::span<const std::string> answers,
                                                MarkingTerms terms = {});

}  // namespace wardchalk

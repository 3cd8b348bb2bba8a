#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/practice/marking/hints.h"
#include "core/practice/sessions/marks_file.h"
#include "core/practice/sessions/set_file.h"

namespace wardchalk {

/// One line of a problem as far as a student has come with it.
struct PracticeLine {
  std::string text;
  std::optional<MarkedLine> marked;  ///< of the text as it stands; none: not checked, or changed since
  std::vector<MistakeId> met;        ///< every mistake that was found in it, each once; corrected ones stay
  int tries = 0;                     ///< how often it was checked
  int rung = 0;                      ///< highest rung of a hint that was used; 0: none
  long seconds = 0;

  [[nodiscard]] bool isRight() const { return marked && marked->mark.mark == Mark::right; }
};

struct PracticeProblem {
  Problem problem;
  std::vector<PracticeLine> lines;  ///< as many as asks
  bool skipped = false;
  bool handedIn = false;

  /// Whether a line is not to be seen yet: what comes after the verdict stays covered until one is given
  /// (`saysVerdict`: it stands on the page, kept or not) or the problem is handed in. Being asked for an
  /// amount must not tell that there is one.
  [[nodiscard]] bool isCovered(std::size_t line, bool saysVerdict) const;
};

/// What the student found in the lines before this one, as it stands there: what a line may be put together
/// of.
[[nodiscard]] std::vector<CarriedAnswer> earlierAnswers(const PracticeProblem& problem, std::size_t line);

/// A student's way through a set of problems. It knows no clock and no sentence, keeps nothing anywhere, and
/// draws a problem only when it is looked at.
class PracticeSession {
 public:
  PracticeSession(PracticeSet set, PracticeMode mode);

  [[nodiscard]] const PracticeSet& set() const { return set_; }
  [[nodiscard]] PracticeMode mode() const { return mode_; }
  [[nodiscard]] std::size_t count() const { return slots_.size(); }

  [[nodiscard]] std::size_t place() const { return place_; }
  /// Places beyond the last are the last.
  void goTo(std::size_t place);
  [[nodiscard]] const PracticeProblem& at(std::size_t place) const;
  /// Whether the problem there was looked at already.
  [[nodiscard]] bool isMade(std::size_t place) const { return slots_[place].made.has_value(); }
  [[nodiscard]] const PracticeProblem& current() const { return at(place_); }

  // Of the current problem. Nothing of a problem that was handed in changes any more.

  /// What stands in the line. A changed line is no longer marked; lines after it that are marked are marked
  /// anew.
  void write(std::size_t line, std::string_view text);
  /// Marks the line as it stands, and anew every line that was marked. An empty line is no try. In a test, or
  /// once it is handed in, nothing happens.
  void check(std::size_t line);
  /// One rung more for a line that is marked and not right; while learning only.
  void climb(std::size_t line);
  void spend(std::size_t line, long seconds);

  /// Leaves the problem aside, and takes it up again; it is no part of what is counted. What was handed in
  /// cannot be.
  void skip();
  void takeUp();
  /// A further problem of the same topic stands behind this one.
  void oneMore();
  /// Marks what is not marked yet and ends the problem; in a test, every problem that was not skipped.
  void handIn();
  [[nodiscard]] bool isOver() const;

 private:
  struct Slot {
    Topic topic;
    std::uint64_t seed;
    mutable std::optional<PracticeProblem>
        made;  ///< a problem follows from topic and seed whenever it is drawn
  };

  [[nodiscard]] PracticeProblem& made(std::size_t place) const;
  void handIn(PracticeProblem& problem);

  PracticeSet set_;
  PracticeMode mode_;
  std::vector<Slot> slots_;
  std::size_t place_ = 0;
  int drawn_ = 0;  ///< seeds used so far
};

}  // namespace wardchalk

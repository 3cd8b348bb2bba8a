#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/practice/making/problem_child.h"
#include "core/practice/making/problem_draw.h"
#include "core/practice/problem/topic.h"
#include "core/record/case_file.h"
#include "core/working/step_id.h"

namespace wardchalk {

/// What the right answer of a problem is to be.
enum class ProblemAim : std::uint8_t { safe, tooMuch, tooLittle, scheduleDiffers, notCovered };

/// A problem before it is worked: what stands on its papers, and what is to be asked.
struct ProblemSketch {
  std::vector<WrittenEntry> entries;
  std::vector<StepId> lines;        ///< asked; the key must have each
  std::vector<StepId> amountLines;  ///< asked after the verdict, whatever it is
  bool verdict = false;             ///< whether the order may be given is asked
  bool rounded = false;             ///< rounding the amount is part of the lesson

  void set(std::string_view path, std::string text) {
    entries.push_back({std::string(path), std::move(text)});
  }
};

/// How the size of a child is written.
enum class SizeStyle : std::uint8_t { metric, household, householdParts };

/// A child's size as written, in thousandths of kg and of m², and its age, to choose a dose by.
struct ProblemSize {
  std::int64_t kg = 0;
  std::int64_t m2 = 0;
  int months = 0;
};

/// A dose as it is to be measured.
struct ProblemDose {
  std::int64_t amount = 0;  ///< thousandths
  std::string_view unit;
  std::string_view route;
  int months = 0;  ///< of the child: how much goes into one place

  [[nodiscard]] bool isSwallowed() const { return route == "oral" || route == "enteral"; }
  [[nodiscard]] ProblemDose in(std::string_view otherUnit, std::int64_t otherAmount) const {
    return {otherAmount, otherUnit, route, months};
  }
};

/// Writes age, sex, weight and, where wanted, height.
ProblemSize writeChild(ProblemSketch& sketch, const ProblemChild& child, SizeStyle style, bool withHeight);

/// Writes the invented medicine, where the reference comes from, and the title.
void writeNames(ProblemSketch& sketch, ProblemDraw& draw);

/// Draws a child from `fewest` to `most` months old and writes weight, medicine and source: what sums about
/// amounts begin with.
ProblemSize beginPapers(ProblemSketch& sketch, ProblemDraw& draw, int fewest, int most);

/// How often a dose is given, and whether that is written in hours.
struct ProblemOften {
  int doses = 1;  ///< a day: 1 to 4
  bool inHours = true;
  [[nodiscard]] std::string text() const;  ///< "every 8 h", "3 times a day"
};

/// A band of age that serves the child, or none; or one that does not. Edges lie half a year or more away.
/// False where no edge does.
bool writeAgeBand(ProblemSketch& sketch, ProblemDraw& draw, const ProblemChild& child, bool serves);

/// What the topics draw. None when the numbers drawn do not go together; then it is drawn again.
using Sketched = std::optional<ProblemSketch>;
[[nodiscard]] Sketched sketchSurface(ProblemDraw& draw, int level);     // problem_maker_size.cpp
[[nodiscard]] Sketched sketchConversion(ProblemDraw& draw, int level);  // problem_maker_size.cpp
[[nodiscard]] Sketched sketchDose(ProblemDraw& draw, Topic topic, int level,
                                  ProblemAim aim);                  // problem_maker_doses.cpp
[[nodiscard]] Sketched sketchLiquid(ProblemDraw& draw, int level);  // problem_maker_amounts.cpp
[[nodiscard]] Sketched sketchSolid(ProblemDraw& draw, int level);   // problem_maker_amounts.cpp
[[nodiscard]] Sketched sketchPowder(ProblemDraw& draw, int level);  // problem_maker_amounts.cpp
[[nodiscard]] Sketched sketchRun(ProblemDraw& draw, Topic topic);   // problem_maker_flows.cpp
[[nodiscard]] Sketched sketchDoseRate(ProblemDraw& draw, int level,
                                      ProblemAim aim);  // problem_maker_rates.cpp

/// Writes a bottle or an ampoule from which the dose can be measured; the label may be in g for a dose in mg.
/// False when none serves.
bool writeLiquid(ProblemSketch& sketch, ProblemDraw& draw, const ProblemDose& dose, bool inGrams);
/// Writes a vial of powder from which the dose can be measured, mixed to a stated volume or with a
/// displacement. False when none serves.
bool writePowder(ProblemSketch& sketch, ProblemDraw& draw, const ProblemDose& dose, int level);
/// What is to run in, and into whom.
struct ProblemRun {
  Topic topic;
  std::int64_t dose;
  std::int64_t kg;  ///< thousandths
};
/// Writes an infusion, and what the reference says of it; `breaks` for one that must not run so. Asks for its
/// lines.
bool writeInfusion(ProblemSketch& sketch, ProblemDraw& draw, const ProblemRun& run, int level, bool breaks);
/// Writes a reference for all children with room on both sides of the dose, and the order within it.
bool writeFlatOrder(ProblemSketch& sketch, ProblemDraw& draw, const ProblemDose& dose);

}  // namespace wardchalk

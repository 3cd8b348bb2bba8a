#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/practice/marking/line_mark.h"
#include "core/practice/marking/marking.h"
#include "core/practice/marking/right_values.h"
#include "core/practice/problem/problem.h"
#include "core/practice/sessions/answers_file.h"

namespace wardchalk {

/// A line as it was marked, with what it was carried on from and the rung of the hint that is given with it.
struct MarkedLine {
  LineMark mark;
  std::vector<CarriedAnswer> carried;
};

/// The answers in the order of the asks, an empty text for one that is missing. Refuses a line that is not
/// asked for.
[[nodiscard]] Result<std::vector<std::string>> inOrderOfAsks(const Problem& problem,
                                                             std::span<const WrittenAnswer> answers);

/// Marks the answers, given in the order of the asks.
[[nodiscard]] std::vector<MarkedLine> markedLines(const Problem& problem,
                                                  std::span<const std::string> answers,
                                                  MarkingTerms terms = {});

/// Appends a marks file as one line of JSON without a line break. Hints are English.
void writeMarks(std::string& out, const Problem& problem, std::span<const MarkedLine> lines, int rung);

/// The same for a person: a paragraph for each line.
[[nodiscard]] std::string marksText(const Problem& problem, std::span<const std::string> answers,
                                    std::span<const MarkedLine> lines, int rung);

}  // namespace wardchalk
